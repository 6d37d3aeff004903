/**
 * An engine model in code: an invented fan stage whose blades are computed from what the air is to do.
 *
 * <p>In the order of flow: {@link teasel.FreeVortex} says how the air turns at each radius, {@link teasel.Cascade}
 * makes blade sections of it, {@link teasel.TeaselFan} puts the rows between walls and adds what a technician
 * needs. It sees nothing of the program but the plugin interface.
 */
package teasel;
