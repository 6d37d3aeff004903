/** Where the program starts. */
package everyblade.desktop;
