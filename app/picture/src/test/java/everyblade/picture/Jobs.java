package everyblade.picture;

/** Jobs half done, with every kind of thing that a map can show. */
final class Jobs {

    private Jobs() {}

    /** A turboprop after a bird: some rows done, one count lost, findings, vanes stated and accepted. */
    static Job larkspur() {
        return Job.on("larkspur-4")
                .leastView(0.3)
                .enter(
                        "heat 24 C",
                        "view in-c1",
                        "datum c1 1 at 0",
                        "round 1 in 180s",
                        "dent 7 tip/suction/leading length 2.4 depth 0.6 ± 0.2 mm",
                        "nick 8 tsl 0.8",
                        "view in-c1-edge",
                        "round 1 in 150s",
                        "view p1-c1",
                        "skip on 118",
                        "here 1",
                        "round 1 in 180s",
                        "recheck 12 trailing light streak on the trailing edge",
                        "view p1-s1",
                        "datum s1 1",
                        "draw 360",
                        "deposit 17 pressure/leading length 6 mm",
                        "view p1-c2",
                        "skip on 34",
                        "datum c2 1",
                        "turn on 90 in 60s",
                        "turn on 90 in 60s",
                        "skip on 60",
                        "turn on 80 in 1s",
                        "view p2-c3",
                        "datum c3 1",
                        "turn on 60 in 45s",
                        "turn on 60 in 45s",
                        "turn on 60 in 45s",
                        "here 1",
                        "turn on 110 in 75s",
                        "view p5-gt",
                        "watch root",
                        "datum gt 1",
                        "round 1 in 200s",
                        "burn 23 root/suction/trailing 1.5 ±0.5",
                        "saw tip/pressure 5-9 photo tip.jpg",
                        "view ex-pt",
                        "datum pt 1",
                        "turn on 200 in 100s",
                        "noaccess c4 root all because no view reaches it");
    }

    /** A large machine, two rows begun. */
    static Job corncrake() {
        return Job.on("corncrake-12")
                .enter(
                        "heat 24 C",
                        "view p11-c11",
                        "datum c11 1",
                        "turn on 200",
                        "view p12-c12",
                        "datum c12 1",
                        "round 1",
                        "nick 40 tip/pressure/trailing 0.4",
                        "view p3-c3",
                        "datum c3 1",
                        "turn on 300",
                        "view n5-t1",
                        "datum t1 1",
                        "turn on 120",
                        "view p9-s9",
                        "datum s9 1",
                        "draw 180",
                        "view in-igv-face",
                        "datum igv 1",
                        "draw 360");
    }

    /** A small unit, nearly done. */
    static Job tansy() {
        return Job.on("tansy-a1")
                .enter(
                        "heat 24 C",
                        "view in-iv",
                        "datum iv 1",
                        "draw 360",
                        "view in-iv-face",
                        "draw 360",
                        "view ex-t",
                        "datum t 1",
                        "round 1",
                        "view ex-t-edge",
                        "round 1",
                        "burn 9 tip/suction/trailing 2",
                        "view ig-comb",
                        "datum comb 1",
                        "draw 360");
    }
}
