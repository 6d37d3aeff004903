package everyblade.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line of a chain, byte for byte as it was sealed.
 *
 * @param n its number in the chain: 0 for the first line, then the numbers of the entries or remarks
 * @param bytes without newline
 * @param hash of this line and all before it, 64 hexadecimal digits
 */
public record SealedLine(int n, byte[] bytes, String hash) {

    /**
     * The lines that these bytes are, if each is the one that was sealed after the one before.
     *
     * @param before hash of the line before them; empty text before the first line
     * @param n number of the first of them
     * @return empty if one of them is not
     */
    static Optional<List<SealedLine>> following(String before, int n, List<byte[]> lines) {
        List<SealedLine> sealed = new ArrayList<>();
        String head = before;
        for (byte[] line : lines) {
            Optional<String> hash = Chain.check(head, line);
            if (hash.isEmpty()) {
                return Optional.empty();
            }
            head = hash.get();
            sealed.add(new SealedLine(n + sealed.size(), line, head));
        }
        return Optional.of(sealed);
    }
}
