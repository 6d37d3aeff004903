package everyblade.core.entry;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The word that a mistyped one was most likely meant to be. */
public final class NearestWord {

    /** Words are compared by their beginnings: what is longer than this resembles no known word. */
    private static final int LONGEST = 40;

    private NearestWord() {}

    /**
     * The known word that takes the fewest slips of the finger to get from, of equals the first in the alphabet; empty
     * if none is so near that it can have been meant.
     */
    public static Optional<String> to(String typed, Collection<String> words) {
        return words.stream()
                .min(Comparator.<String>comparingInt(word -> slips(typed, word)).thenComparing(word -> word))
                .filter(word -> slips(typed, word) <= Math.max(1, Math.max(typed.length(), word.length()) / 3));
    }

    /** Letters left out, added, mistaken or swapped with their neighbour, at least so many. */
    static int slips(String typed, String word) {
        int rows = Math.min(typed.length(), LONGEST);
        int[][] least = new int[rows + 1][word.length() + 1];
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= word.length(); column++) {
                if (row == 0 || column == 0) {
                    least[row][column] = row + column;
                    continue;
                }
                int differs = typed.charAt(row - 1) == word.charAt(column - 1) ? 0 : 1;
                least[row][column] = Math.min(
                        Math.min(least[row - 1][column], least[row][column - 1]) + 1,
                        least[row - 1][column - 1] + differs);
                if (row > 1
                        && column > 1
                        && typed.charAt(row - 1) == word.charAt(column - 2)
                        && typed.charAt(row - 2) == word.charAt(column - 1)) {
                    least[row][column] = Math.min(least[row][column], least[row - 2][column - 2] + 1);
                }
            }
        }
        return least[rows][word.length()];
    }
}
