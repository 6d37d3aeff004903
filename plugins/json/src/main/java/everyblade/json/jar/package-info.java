/**
 * Opens jars that hold engine models, whatever is in them: nothing that a jar does, or fails to do, reaches the program
 * other than as data.
 *
 * <p>Takes the path of a jar. Gives a list of {@link everyblade.json.jar.Handed}: texts of {@code engine.json}, as they
 * stand in the jar or as its code would write them, and faults. In the order of flow: {@link
 * everyblade.json.jar.JarReader} gives each jar a thread and a limit of time, {@code Contents} looks at sizes and names,
 * {@code Metadata} at what the manifest says, both before any class is loaded; {@code Sources} lets the code speak. What
 * each {@link everyblade.json.jar.Fault} means stands in the table of all codes.
 *
 * <p>This keeps mistakes from spreading. It is no wall against malice: code in a jar may do what the user may do.
 */
package everyblade.json.jar;
