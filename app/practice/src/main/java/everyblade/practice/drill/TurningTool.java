package everyblade.practice.drill;

import everyblade.practice.harm.Dice;
import everyblade.spi.Pad;

/**
 * A tool at a turning pad, as hands find it: what it reads is not what the shaft does. Each move is off by an error, the first
 * one after a reversal falls short by some of the backlash, and after each push the rotor may roll back; how much of it follows
 * from a number, so that the same drill is the same again. Never changes.
 *
 * @param reads by how much the tool was turned in all, in degrees of the shaft
 * @param direction of the last move, 1 or −1; 0 before the first one
 * @param moving whether that move goes on
 * @param free by how much the tool can still be turned that way before the shaft follows, degrees of shaft
 * @param off error of this move that is still to come, degrees of shaft, signed
 * @param carried by how much this move has turned the shaft, degrees, without sign
 * @param seed of what is still left to chance
 */
public record TurningTool(
        double reads, int direction, boolean moving, double free, double off, double carried, long seed) {

    /** So many standard deviations make the 95 % that a pad's play states. */
    private static final double DEVIATIONS = 1.96;

    /** An error comes over a way, not at once: this share of it at most. */
    private static final double GRADUAL = 0.1;

    /**
     * What came of turning a tool.
     *
     * @param tool as it is now
     * @param shaft by how much that turned the shaft, degrees
     */
    public record Turned(TurningTool tool, double shaft) {}

    /** A tool that nobody has turned yet. */
    public static TurningTool at(long seed) {
        return at(seed, 0);
    }

    /** A tool that is taken up again, and reads so much; which way it was turned last is forgotten. */
    public static TurningTool at(long seed, double reads) {
        return new TurningTool(reads, 0, false, 0, 0, 0, seed);
    }

    /** Turns it on. */
    public Turned turn(Pad pad, double degrees) {
        int way = (int) Math.signum(degrees);
        if (way == 0) {
            return new Turned(this, 0);
        }
        TurningTool begun = moving && way == direction ? this : begin(pad, way);
        double taken = Math.min(Math.abs(degrees), begun.free);
        double carries = Math.abs(degrees) - taken;
        double error = Math.max(-GRADUAL * carries, Math.min(GRADUAL * carries, begun.off));
        double shaft = way * carries + error;
        return new Turned(
                new TurningTool(
                        begun.reads + degrees,
                        way,
                        true,
                        begun.free - taken,
                        begun.off - error,
                        begun.carried + Math.abs(shaft),
                        begun.seed),
                shaft);
    }

    private TurningTool begin(Pad pad, int way) {
        Dice dice = new Dice(seed);
        boolean reversed = direction != 0 && way != direction;
        // Box and Muller: two even shares make a normal one.
        double normal = StrictMath.sqrt(-2 * StrictMath.log(1 - dice.share()))
                * StrictMath.cos(2 * StrictMath.PI * dice.share());
        double backlash = dice.between(0, pad.backlash());
        return new TurningTool(
                reads, way, true, reversed ? backlash : free, normal * pad.play() / DEVIATIONS, 0, dice.next());
    }

    /** Lets it go: the rotor may roll back, though never further than it was turned. */
    public Turned rest(Pad pad) {
        if (!moving) {
            return new Turned(this, 0);
        }
        Dice dice = new Dice(seed);
        double back = Math.min(carried, dice.between(0, pad.drift()));
        return new Turned(new TurningTool(reads, direction, false, free, 0, 0, dice.next()), -direction * back);
    }
}
