package everyblade.picture.report;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Fold;
import java.time.Instant;

/**
 * The record of the same engine that this one is compared with.
 *
 * @param fold of its journal
 * @param coverage of that fold's situation
 * @param at when it was started, UTC
 * @param head hash of its last line
 */
public record LastRecord(Fold fold, Coverage coverage, Instant at, String head) {}
