/**
 * Opens jars that hold engine models, whatever is in them: nothing that a jar does, or fails to do, reaches the program
 * other than as data.
 *
 * <p>Takes the path of a jar. Gives a list of {@link everyblade.json.jar.Handed}: texts of {@code engine.json}, as they
 * stand in the jar or as its code would write them, and faults. In the order of flow: {@link
 * everyblade.json.jar.JarReader} opens each jar and runs nothing, {@code Contents} looks at sizes and names, {@code
 * Metadata} at what the manifest says, {@code JarSigner} at who signed it. What only code can tell goes through a {@link
 * everyblade.json.jar.CodeDoor}, known by the hash of its bytes. Behind it {@link everyblade.json.jar.OwnProcess} lets the
 * code speak in another process, where {@code Sources} asks it and {@code Transcript} is all that comes back. What each
 * {@link everyblade.json.jar.Fault} means stands in the table of all codes.
 *
 * <p>This keeps mistakes from spreading. It is no wall against malice: code in a jar may do what the user may do, which is
 * why a person is asked first, by whoever holds the door.
 */
package everyblade.json.jar;
