package everyblade.practice.harm;

import everyblade.core.entry.Kind;
import java.util.Optional;

/** What may be on an airfoil: damage, which is to be called, and what only looks like it. */
public enum HarmKind {
    NICK(Kind.NICK, Where.EDGE),
    DENT(Kind.DENT, Where.FACE),
    CRACK(Kind.CRACK, Where.EDGE),
    MISSING(Kind.MISSING, Where.CORNER),
    BURN(Kind.BURN, Where.EDGE),
    RUB(Kind.RUB, Where.TIP),
    COATING(Kind.COATING, Where.FACE),
    /** A mark that somebody left, or that a tool left when it was made. */
    MARK(null, Where.FACE),
    /** What the air has left behind. */
    DEPOSIT(null, Where.FACE),
    /** A smooth spot that throws the light back. */
    GLINT(null, Where.FACE);

    /** Where on an airfoil it is found. */
    enum Where {
        FACE,
        EDGE,
        CORNER,
        TIP
    }

    private final Kind kind;
    private final Where where;

    HarmKind(Kind kind, Where where) {
        this.kind = kind;
        this.where = where;
    }

    /** By which word it is called; empty if it is harmless. */
    public Optional<Kind> called() {
        return Optional.ofNullable(kind);
    }

    /** Whether it is to be called. */
    public boolean isDamage() {
        return kind != null;
    }

    Where where() {
        return where;
    }
}
