package everyblade.core.coverage;

import everyblade.core.Job;
import everyblade.core.coverage.Oracle.OracleRow;
import everyblade.core.coverage.Oracle.OracleView;
import everyblade.core.entry.DecimalComma;
import everyblade.core.entry.Refusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.hipparchus.fraction.BigFraction;

/** A random job on a random engine, entered as text on one side and told to the oracle as steps on the other. */
final class RandomJob {

    private static final BigFraction TURN = new BigFraction(360);

    private final SplittableRandom random;
    private final RandomEngine engine;
    private final Job job;
    private final List<String> lines = new ArrayList<>();
    /** One step a line, in the same order. */
    private final List<Consumer<Oracle>> steps = new ArrayList<>();

    private int pad;
    private Oracle now = new Oracle();

    RandomJob(long seed) {
        random = new SplittableRandom(seed);
        engine = new RandomEngine(random);
        job = new Job(engine.exact());
        int entries = 4 + random.nextInt(28);
        while (lines.size() < entries) {
            step();
        }
    }

    Job job() {
        return job;
    }

    RandomEngine engine() {
        return engine;
    }

    List<String> lines() {
        return lines;
    }

    Oracle oracle() {
        return replayed(voided(lines));
    }

    /** Enters a line and takes the oracle one step further. */
    private void add(String line, Consumer<Oracle> step) {
        job.enter(line);
        lines.add(line);
        steps.add(step);
        step.accept(now);
    }

    private void step() {
        if (now.view() == null || random.nextInt(6) == 0) {
            OracleView view = engine.views.get(random.nextInt(engine.views.size()));
            add("view " + view.id(), oracle -> oracle.seat(view));
            return;
        }
        switch (random.nextInt(13)) {
            case 0 -> {
                List<String> parts = engine.parts(now.view().row());
                add("watch " + String.join(" ", parts), oracle -> oracle.watch(parts));
            }
            case 1 -> add("look", Oracle::look);
            case 2, 3 -> identify();
            case 4 -> changePad();
            case 5 -> strike();
            case 6 -> slip();
            case 7 -> add("in", oracle -> oracle.among(true));
            default -> move();
        }
    }

    private void changePad() {
        int chosen = random.nextInt(engine.ratios.length);
        pad = chosen;
        add("pad pad" + chosen, oracle -> {});
    }

    private void identify() {
        OracleRow row = now.view().row();
        int airfoil = now.counting() ? now.atReference() : 1 + random.nextInt(row.count());
        if (airfoil == 0) {
            return;
        }
        switch (random.nextInt(4)) {
            case 0 -> add("here " + airfoil, oracle -> oracle.identify(airfoil));
            case 1 -> add("datum " + row.id() + " " + airfoil, oracle -> oracle.identify(airfoil));
            case 2 -> {
                if (row.turns()) {
                    int angle = random.nextInt(360);
                    add("datum " + row.id() + " " + airfoil + " at " + angle, oracle -> {
                        oracle.identify(airfoil);
                        oracle.label(new BigFraction(angle));
                    });
                }
            }
            default -> {
                if (row.turns()) {
                    clear();
                    add("round " + airfoil, oracle -> {
                        oracle.identify(airfoil);
                        oracle.turn(TURN.multiply(engine.normal.sign()), true);
                    });
                }
            }
        }
    }

    /** A slip that an identification settles at once; by whole ticks, for corrections are kept to the nearest tick. */
    private void slip() {
        OracleRow row = now.view().row();
        if (!row.turns() || !now.counting()) {
            return;
        }
        int airfoil = 1 + random.nextInt(row.count());
        BigFraction ticks = now.slip(airfoil).multiply(3_600_000);
        if (ticks.getDenominatorAsInt() == 1) {
            add("slip", oracle -> {});
            add("here " + airfoil, oracle -> oracle.slipTo(airfoil));
        }
    }

    private void move() {
        OracleRow row = now.view().row();
        boolean watched = random.nextInt(3) > 0;
        if (!row.turns()) {
            String verb = watched ? "draw " : "feed ";
            if (random.nextInt(3) == 0) {
                moveTo(verb, now.referenceNow(), 1, (oracle, by) -> oracle.draw(by, watched));
            } else {
                moveBy(verb, row, false, (oracle, by) -> oracle.draw(by, watched));
            }
            return;
        }
        clear();
        String verb = watched ? "turn " : "skip ";
        if (random.nextInt(3) == 0) {
            moveTo(verb, now.readingNow(), engine.normal.sign(), (oracle, by) -> oracle.turn(by, watched));
        } else {
            moveBy(verb, row, true, (oracle, by) -> oracle.turn(by, watched));
        }
    }

    /** Nothing turns while the scope tip is among the blades. */
    private void clear() {
        if (now.among()) {
            add("clear", oracle -> oracle.among(false));
        }
    }

    private interface Mover {
        void move(Oracle oracle, BigFraction by);
    }

    private void moveBy(String verb, OracleRow row, boolean shaft, Mover mover) {
        BigDecimal number = BigDecimal.valueOf(random.nextInt(1, 40000), random.nextInt(2) == 0 ? 2 : 1);
        BigFraction amount;
        String unit;
        switch (random.nextInt(shaft ? 4 : 2)) {
            case 0 -> {
                unit = random.nextBoolean() ? "" : " deg";
                amount = RandomEngine.exact(number);
            }
            case 1 -> {
                number = BigDecimal.valueOf(random.nextInt(1, 60));
                unit = " blades";
                amount = RandomEngine.exact(number).multiply(TURN).divide(row.count());
            }
            case 2 -> {
                number = number.movePointLeft(2);
                unit = " rev";
                amount = RandomEngine.exact(number).multiply(TURN);
            }
            default -> {
                number = number.movePointLeft(2);
                unit = " tool";
                amount = RandomEngine.exact(number)
                        .multiply(TURN)
                        .multiply(new BigFraction(
                                (int) engine.ratios[pad].numerator(), (int) engine.ratios[pad].denominator()));
            }
        }
        String plain = number.toPlainString();
        int way = random.nextInt(4);
        if (way < 2) {
            // On is the normal direction of the spool, and clockwise for the scope tip, whatever the tool does.
            int sign = (shaft ? engine.normal.sign() : 1) * (way == 0 ? 1 : -1);
            BigFraction by = amount.abs().multiply(sign);
            add(verb + (way == 0 ? "on " : "back ") + plain + unit, oracle -> mover.move(oracle, by));
        } else if (way == 2) {
            BigFraction by = amount.negate();
            String comma = plain.replace('.', ',');
            add(
                    verb + "-" + (DecimalComma.doubt(comma).isPresent() ? plain : comma) + unit,
                    oracle -> mover.move(oracle, by));
        } else {
            BigFraction by = amount;
            add(verb + plain + unit, oracle -> mover.move(oracle, by));
        }
    }

    private void moveTo(String verb, BigFraction from, int on, Mover mover) {
        int target = random.nextInt(360);
        BigFraction clockwise = Oracle.wrapped(new BigFraction(target).subtract(from));
        BigFraction other = clockwise.equals(BigFraction.ZERO) ? BigFraction.ZERO : clockwise.subtract(TURN);
        if (random.nextInt(3) == 0) {
            boolean isOn = random.nextBoolean();
            Consumer<Oracle> step = steered(target, verb, (isOn ? on : -on) > 0 ? 1 : -1, mover);
            add(verb + (isOn ? "on to " : "back to ") + target, step);
        } else if (!clockwise.equals(new BigFraction(180)) && !other.equals(new BigFraction(-180))) {
            add(verb + "to " + target, steered(target, verb, 0, mover));
        }
    }

    /** Where a move to a reading starts is known only when it is made: an entry before it may be struck later. */
    private static Consumer<Oracle> steered(int target, String verb, int way, Mover mover) {
        boolean shaft = verb.startsWith("turn") || verb.startsWith("skip");
        return oracle -> {
            BigFraction from = shaft ? oracle.readingNow() : oracle.referenceNow();
            BigFraction clockwise = Oracle.wrapped(new BigFraction(target).subtract(from));
            BigFraction other = clockwise.equals(BigFraction.ZERO) ? BigFraction.ZERO : clockwise.subtract(TURN);
            boolean goesClockwise = way == 0 ? clockwise.compareTo(new BigFraction(180)) < 0 : way > 0;
            mover.move(oracle, goesClockwise ? clockwise : other);
        };
    }

    private void strike() {
        int target = 1 + random.nextInt(lines.size());
        List<String> longer = new ArrayList<>(lines);
        longer.add("void " + target + " because it was wrong");
        steps.add(oracle -> {});
        Oracle without = voided(lines).contains(target) ? null : replayable(longer);
        steps.remove(steps.size() - 1);
        if (without == null) {
            return;
        }
        try {
            job.tryEnter(longer.get(longer.size() - 1));
        } catch (Refusal refused) {
            return;
        }
        lines.add(longer.get(longer.size() - 1));
        steps.add(oracle -> {});
        now = without;
        pad = padIn(voided(lines));
    }

    private int padIn(Set<Integer> voided) {
        int last = 0;
        for (int k = 1; k <= lines.size(); k++) {
            if (!voided.contains(k) && lines.get(k - 1).startsWith("pad pad")) {
                last = Integer.parseInt(lines.get(k - 1).substring("pad pad".length()));
            }
        }
        return last;
    }

    /**
     * The oracle after the entries that count; null if they cannot be, or if a count would then be lost. Steps keep the
     * row and the tool that were in use when they were made, so what names these is not struck.
     */
    private Oracle replayable(List<String> entered) {
        Set<Integer> voided = voided(entered);
        boolean tools = entered.stream().anyMatch(line -> line.contains("tool"));
        boolean viewStruck = voided.stream().anyMatch(k -> entered.get(k - 1).startsWith("view"));
        boolean padStruck = voided.stream().anyMatch(k -> entered.get(k - 1).startsWith("pad"));
        boolean slipStruck = voided.stream()
                .anyMatch(k -> entered.get(k - 1).equals("slip")
                        || k > 1 && entered.get(k - 2).equals("slip"));
        boolean slipped = entered.contains("slip");
        if (tools && padStruck || viewStruck || slipStruck || slipped) {
            return null;
        }
        try {
            Oracle oracle = replayed(voided);
            return oracle.consistent() ? oracle : null;
        } catch (NullPointerException noView) {
            return null;
        }
    }

    private Oracle replayed(Set<Integer> voided) {
        Oracle oracle = new Oracle();
        for (int k = 1; k <= steps.size(); k++) {
            if (!voided.contains(k)) {
                steps.get(k - 1).accept(oracle);
            }
        }
        return oracle;
    }

    /** The entries that do not count: struck by one that is not struck itself. */
    static Set<Integer> voided(List<String> entered) {
        Set<Integer> voided = new HashSet<>();
        for (int k = entered.size(); k >= 1; k--) {
            String line = entered.get(k - 1);
            if (line.startsWith("void ") && !voided.contains(k)) {
                voided.add(Integer.parseInt(line.split(" ")[1]));
            }
        }
        return voided;
    }
}
