package everyblade.core.coverage;

/**
 * Facets in sight and watched, airfoil by airfoil; what is sure, patch by patch where an edge of sight crosses a facet.
 *
 * @param sure surely, wherever within its tolerance the scope tip stood
 * @param whole of these, patches along an edge of sight that were surely in sight as a whole
 * @param maybe surely or maybe
 * @param placed surely, from some place at which the scope tip may have stood
 * @param counted maybe, where the count held
 * @param lost maybe, where the count was lost
 * @param brief in sight, but too briefly
 * @param unwatched maybe in sight, but not being watched
 */
record FacetsSeen(
        PatchBits sure,
        PatchBits whole,
        CellBits maybe,
        CellBits placed,
        CellBits counted,
        CellBits lost,
        CellBits brief,
        CellBits unwatched) {

    static FacetsSeen none(int airfoils, int facets) {
        return new FacetsSeen(
                PatchBits.none(airfoils, facets),
                PatchBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets),
                CellBits.none(airfoils, facets));
    }

    FacetsSeen copy() {
        return new FacetsSeen(
                sure.copy(),
                whole.copy(),
                maybe.copy(),
                placed.copy(),
                counted.copy(),
                lost.copy(),
                brief.copy(),
                unwatched.copy());
    }
}
