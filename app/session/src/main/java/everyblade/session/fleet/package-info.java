/** A shop's store as window and command line have it: how it is opened, how its refusals are told, and what is computed for it. */
package everyblade.session.fleet;
