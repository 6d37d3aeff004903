/**
 * Where everything stands: what each entry means after those before it.
 *
 * <p>Takes an engine model and entries. Judges each entry (is there such a view, may the shaft turn that way), and gives
 * a {@link everyblade.core.turning.Situation}: the view in use, every stop of every shaft with its counted angle and
 * what it may be off, the passes in which rows were watched, and what people said about single cells. Identifications
 * tie the counted angles to the airfoils; {@link everyblade.core.turning.SmoothedTrack} then says where a row stood at a stop,
 * and how surely.
 */
package everyblade.core.turning;
