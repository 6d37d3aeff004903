/**
 * Lengths measured in pictures: two points against a known length, with the uncertainty carried through (GUM, JCGM
 * 100:2008, first order).
 *
 * <p>Takes points in pixels, a known length in the same picture, and how each was seen, as far as the engine model and
 * the pose tell it. Gives a measured length, where its uncertainty comes from, and what a person should be warned of.
 */
package everyblade.core.finding.measure;
