/**
 * What was computed and can be computed again, kept in the user's own cache. It is never taken from a folder that was
 * received, and never believed unless this user's program wrote it: each file is sealed with a key that only the user
 * has. It may be thrown away at any time.
 */
package everyblade.record.derived;
