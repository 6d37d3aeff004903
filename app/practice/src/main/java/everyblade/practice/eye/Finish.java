package everyblade.practice.eye;

/** How a kind of surface looks before anything has happened to it. */
public enum Finish {
    /** Blades and vanes of a compressor: ground metal. */
    COLD(0.43f, 0.44f, 0.46f, 0.55f, 22, 0),
    /** Blades and vanes of a turbine: dull, coloured by heat from the tip down. */
    HOT(0.40f, 0.36f, 0.31f, 0.30f, 10, 1),
    /** A combustor: sooty sheet. */
    LINER(0.33f, 0.29f, 0.25f, 0.18f, 7, 1),
    /** Hub and casing: turned metal, in shade. */
    WALL(0.24f, 0.25f, 0.27f, 0.30f, 12, 0);

    private final float red;
    private final float green;
    private final float blue;
    private final float gloss;
    private final float polish;
    private final float heat;

    Finish(float red, float green, float blue, float gloss, float polish, float heat) {
        this.red = red;
        this.green = green;
        this.blue = blue;
        this.gloss = gloss;
        this.polish = polish;
        this.heat = heat;
    }

    /**
     * Gives a spot its look.
     *
     * @param seed of this one of several alike
     * @param grime 0 for a washed engine, 1 for a dirty one
     */
    void on(EyeSurface spot, int seed, float grime) {
        float r = (float) Math.sqrt(spot.y * spot.y + spot.z * spot.z);
        // Grinding marks run along the flow: fine across the span, long along the chord.
        float marks = Noise.at(r * 9, spot.x * 0.35f, seed) - 0.5f;
        float cloud = Noise.at(spot.x * 0.16f + spot.y * 0.05f, r * 0.16f, seed + 5);
        float tone = 0.88f + 0.16f * marks + 0.22f * (cloud - 0.5f);
        spot.colour(red * tone, green * tone, blue * tone);
        spot.gloss = gloss * (0.8f + 0.5f * marks);
        spot.polish = polish;
        float tilt = 0.10f * marks;
        float outwards = r == 0 ? 0 : tilt / r;
        spot.tilt(0, outwards * spot.y, outwards * spot.z);
        if (heat > 0) {
            float scorch = heat * Noise.at(spot.x * 0.12f, r * 0.07f, seed + 9);
            spot.towards(0.35f * scorch, 0.38f, 0.27f, 0.17f);
        }
        if (grime > 0) {
            soil(spot, r, seed, grime);
        }
    }

    /** Dirt lies in a film that the flow has drawn out, and dulls what is under it. */
    private static void soil(EyeSurface spot, float r, int seed, float grime) {
        float film = Noise.at(spot.x * 0.22f, r * 0.6f, seed + 17);
        float specks = Noise.at(spot.x * 1.7f, r * 2.3f, seed + 23);
        float share = grime * Math.min(1, Math.max(0, 1.5f * film - 0.35f) * (0.55f + 0.6f * specks));
        spot.towards(0.85f * share, 0.13f, 0.10f, 0.065f);
        spot.gloss *= 1 - 0.85f * share;
    }
}
