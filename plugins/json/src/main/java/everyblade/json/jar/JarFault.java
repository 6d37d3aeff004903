package everyblade.json.jar;

/** Ends the opening of a jar; says nothing beyond its {@link Complaint}. */
final class JarFault extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Complaint complaint;

    JarFault(Fault fault, String what, String why, String mend) {
        super(what, null, false, false);
        this.complaint = new Complaint(fault, what, why, mend);
    }

    Complaint complaint() {
        return complaint;
    }
}
