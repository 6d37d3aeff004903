/**
 * An engine model in code: an invented fan stage whose blades are computed from what the air is to do.
 *
 * <p>In the order of flow: {@link nightjar.FreeVortex} says how the air turns at each radius, {@link nightjar.Cascade}
 * makes blade sections of it, {@link nightjar.NightjarFan} puts the rows between walls and adds what a technician
 * needs. It sees nothing of the program but the plugin interface.
 */
package nightjar;
