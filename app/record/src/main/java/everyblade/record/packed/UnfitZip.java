package everyblade.record.packed;

import everyblade.fact.Fact;

/** A zip that is not unpacked for what it is. */
public final class UnfitZip extends Exception {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 80;

    private final transient ZipFlaw flaw;

    UnfitZip(ZipFlaw flaw) {
        super(flaw.toString());
        this.flaw = flaw;
    }

    /** Why, as the end of a sentence. */
    public Fact why() {
        return flaw;
    }

    static UnfitZip within(String name, ZipFlaw.Kind kind) {
        return new UnfitZip(new ZipFlaw.Within(plain(name), kind));
    }

    /** A name that somebody else chose, fit for a line. */
    static String plain(String name) {
        String plain = name.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Zl}\\p{Zp}]", "?");
        return plain.length() > LONGEST ? plain.substring(0, LONGEST) + "…" : plain;
    }
}
