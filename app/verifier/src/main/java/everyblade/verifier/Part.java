package everyblade.verifier;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A part of a file that was laid flat: its values by their names in it. */
record Part(Map<String, String> all, String path) {

    String text(String name) {
        return all.getOrDefault(path + name, "");
    }

    double number(String name, double otherwise) {
        String[] ratio = all.getOrDefault(path + name, "" + otherwise).split("/");
        return Double.parseDouble(ratio[0]) / (ratio.length > 1 ? Double.parseDouble(ratio[1]) : 1);
    }

    List<Part> parts(String name) {
        Stream<String> names = IntStream.range(0, 9999).mapToObj(i -> path + name + "." + i);
        return names.takeWhile(all::containsKey)
                .map(each -> new Part(all, each + "."))
                .toList();
    }

    List<String> words(String name) {
        return parts(name).stream()
                .map(each -> all.get(each.path.replaceAll(".$", "")))
                .toList();
    }
}
