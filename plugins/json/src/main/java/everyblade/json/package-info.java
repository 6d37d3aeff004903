/**
 * Engine models as files, and the shelf that finds them: folders with an {@code engine.json}, and jars.
 *
 * <p>Takes bytes of a file, a folder or a jar. Gives an {@link everyblade.spi.EngineModel} with every default filled in
 * and warnings, or the problems that stand in its way, each with file, line, column and JSON pointer; never an
 * exception. {@link everyblade.json.EngineJsonWriter} goes the other way, to a text that is the same on every machine.
 *
 * <p>In the order of flow: {@code JsonTree} makes located values of bytes, {@code Fields} takes one object apart, the
 * readers build records, {@code ModelValidator} judges what only shows in the whole, {@code ModelShelf} finds models; {@link
 * everyblade.json.jar} opens jars. What each code of a problem means stands in {@code problem-codes.md}, see {@link
 * everyblade.json.ProblemCode}; {@link everyblade.json.TextPlaces} lets others tell problems of their own by line and column.
 *
 * <p>{@code JsonTree}, {@code Fields} and {@code ProblemLog} know nothing of engines: readers of other data files of the
 * program use them too, so that all its files are read and complained of alike.
 */
package everyblade.json;
