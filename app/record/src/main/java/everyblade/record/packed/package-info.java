/**
 * A job as one file that travels: what of a job's folder goes into a zip, and how a zip that somebody sent becomes a folder
 * again, whatever is in it. Takes files and names, gives files in a folder that nobody else uses, or the reason why not.
 */
package everyblade.record.packed;
