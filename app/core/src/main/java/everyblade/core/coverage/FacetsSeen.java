package everyblade.core.coverage;

/**
 * Facets in sight and watched, airfoil by airfoil.
 *
 * @param sure surely, wherever within its tolerance the scope tip stood
 * @param maybe surely or maybe
 * @param placed surely, if the scope tip stood exactly at its station
 * @param lost maybe, where the count was lost
 * @param brief in sight, but too briefly
 */
record FacetsSeen(CellBits sure, CellBits maybe, CellBits placed, CellBits lost, CellBits brief) {

    static FacetsSeen none(int airfoils, int facets) {
        return new FacetsSeen(
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets));
    }

    FacetsSeen copy() {
        return new FacetsSeen(sure.copy(), maybe.copy(), placed.copy(), lost.copy(), brief.copy());
    }
}
