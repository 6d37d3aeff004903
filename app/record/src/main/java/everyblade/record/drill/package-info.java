/**
 * What a drill's folder holds beside what a job's holds: what the trainee may know and the sealed truth ({@code drill/drill.json},
 * frozen like an engine model), the track of the scope tip ({@code drill/track.jsonl}), and once it is over the truth
 * ({@code drill/truth.json}).
 */
package everyblade.record.drill;
