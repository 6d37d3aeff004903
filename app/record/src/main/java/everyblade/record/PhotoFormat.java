package everyblade.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.record.photo.PhotoFacts;
import java.util.List;
import java.util.Optional;

/** How a line of the journal tells of the picture that its entry names. */
final class PhotoFormat {

    private static final List<String> KEYS =
            List.of("file", "sha256", "bytes", "type", "width", "height", "orientation", "taken");

    private PhotoFormat() {}

    static ObjectNode write(KeptPhoto photo) {
        PhotoFacts facts = photo.facts();
        ObjectNode node = JobJson.object();
        node.put("file", photo.file());
        node.put("sha256", photo.sha256());
        node.put("bytes", photo.bytes());
        node.put("type", facts.type());
        node.put("width", facts.width());
        node.put("height", facts.height());
        node.put("orientation", facts.orientation());
        facts.taken().ifPresent(taken -> node.put("taken", taken));
        return node;
    }

    static KeptPhoto read(JsonNode node, boolean unknownKeysToo) throws Unreadable {
        Meaning.require(node.isObject(), "photo", LineFlaw.Sort.OBJECT);
        ObjectNode photo = (ObjectNode) node;
        if (!unknownKeysToo) {
            Meaning.requireKnown(photo, KEYS);
        }
        Meaning.require(photo.path("bytes").isIntegralNumber(), "bytes", LineFlaw.Sort.WHOLE_NUMBER);
        return new KeptPhoto(
                LineFormat.text(photo, "file"),
                LineFormat.text(photo, "sha256"),
                photo.get("bytes").longValue(),
                new PhotoFacts(
                        LineFormat.text(photo, "type"),
                        whole(photo, "width"),
                        whole(photo, "height"),
                        whole(photo, "orientation"),
                        photo.has("taken") ? Optional.of(LineFormat.text(photo, "taken")) : Optional.empty()));
    }

    private static int whole(ObjectNode node, String key) throws Unreadable {
        Meaning.require(node.path(key).isInt(), key, LineFlaw.Sort.WHOLE_NUMBER);
        return node.get(key).intValue();
    }
}
