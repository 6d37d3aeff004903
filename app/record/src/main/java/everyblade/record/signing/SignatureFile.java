package everyblade.record.signing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A statement with its signature, as a file of one line: a JSON object that ends with
 * {@code ,"signature":"…"}} and a newline. Signed are the bytes of the line before that ending, the key among them; so
 * nothing about the signature can be changed, and whoever checks it needs no rule how JSON is to be written.
 *
 * @param statement what is signed
 * @param key that it is signed with, as X.509 writes public keys
 * @param sha256 of the file, 64 hexadecimal digits
 */
public record SignatureFile(Statement statement, PublicKey key, String sha256) {

    private static final String SCHEMA = "everyblade/signature/1";
    private static final Pattern LINE = Pattern.compile("(\\{.*),\"signature\":\"([A-Za-z0-9+/]{86}==)\"}\n");
    private static final List<String> KEYS = List.of(
            "schema",
            "as",
            "name",
            "licence",
            "number",
            "at",
            "journal",
            "entries",
            "head",
            "program",
            "figures",
            "because",
            "before",
            "key",
            "signature");
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** The bytes of a signature of this statement. */
    public static byte[] write(Statement statement, SigningKey key) {
        ObjectNode line = MAPPER.createObjectNode();
        line.put("schema", SCHEMA);
        line.put("as", statement.as().word());
        line.put("name", statement.signer().name());
        statement.signer().licence().ifPresent(licence -> line.put("licence", licence));
        statement.signer().number().ifPresent(number -> line.put("number", number));
        line.put("at", statement.at().toString());
        line.put("journal", statement.journal());
        line.put("entries", statement.entries());
        line.put("head", statement.head());
        line.put("program", statement.program());
        ObjectNode figures = line.putObject("figures");
        statement.figures().forEach(figures::put);
        statement.because().ifPresent(because -> line.put("because", because));
        statement.before().ifPresent(before -> line.put("before", before));
        line.put("key", Base64.getEncoder().encodeToString(key.publicKey().getEncoded()));
        try {
            String text = MAPPER.writeValueAsString(line);
            String signed = text.substring(0, text.length() - 1);
            Signature signature = Signature.getInstance("Ed25519");
            signature.initSign(key.privateKey());
            signature.update(signed.getBytes(StandardCharsets.UTF_8));
            String ending = Base64.getEncoder().encodeToString(signature.sign());
            return (signed + ",\"signature\":\"" + ending + "\"}\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException | GeneralSecurityException impossible) {
            throw new IllegalStateException("an Ed25519 key signs any bytes", impossible);
        }
    }

    /**
     * Reads a signature back and checks that its key made it.
     *
     * @throws Unsigned if it is none, or does not fit what it is to sign
     */
    public static SignatureFile read(byte[] file) throws Unsigned {
        Matcher line = LINE.matcher(new String(file, StandardCharsets.UTF_8));
        if (!line.matches()) {
            throw new Unsigned(SignatureFlaw.Whole.CUT_SHORT);
        }
        ObjectNode node = object(file);
        for (var names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!KEYS.contains(name)) {
                throw new Unsigned(new SignatureFlaw.UnknownKey(name));
            }
        }
        if (!text(node, "schema").equals(SCHEMA)) {
            throw new Unsigned(SignatureFlaw.Whole.OTHER_VERSION);
        }
        PublicKey key = key(text(node, "key"));
        try {
            Signature signature = Signature.getInstance("Ed25519");
            signature.initVerify(key);
            signature.update(line.group(1).getBytes(StandardCharsets.UTF_8));
            if (!signature.verify(Base64.getDecoder().decode(line.group(2)))) {
                throw new Unsigned(SignatureFlaw.Whole.DOES_NOT_FIT);
            }
        } catch (GeneralSecurityException unfit) {
            throw new Unsigned(SignatureFlaw.Whole.DOES_NOT_FIT);
        }
        return new SignatureFile(statement(node), key, sha256(file));
    }

    private static ObjectNode object(byte[] file) throws Unsigned {
        try {
            if (MAPPER.readTree(file) instanceof ObjectNode object) {
                return object;
            }
        } catch (IOException unreadable) {
            // said below
        }
        throw new Unsigned(SignatureFlaw.Whole.NO_JSON_OBJECT);
    }

    private static Statement statement(ObjectNode node) throws Unsigned {
        Map<String, String> figures = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> figure : node.path("figures").properties()) {
            require(figure.getValue().isTextual(), figure.getKey());
            figures.put(figure.getKey(), figure.getValue().textValue());
        }
        require(node.path("entries").isInt(), "entries");
        require(HASH.matcher(text(node, "journal")).matches(), "journal");
        require(HASH.matcher(text(node, "head")).matches(), "head");
        return new Statement(
                SignedAs.of(text(node, "as")).orElseThrow(() -> new Unsigned(SignatureFlaw.Whole.UNKNOWN_MEANING)),
                new Signer(text(node, "name"), textIfThere(node, "licence"), textIfThere(node, "number")),
                time(node),
                text(node, "journal"),
                node.get("entries").intValue(),
                text(node, "head"),
                text(node, "program"),
                figures,
                textIfThere(node, "because"),
                textIfThere(node, "before"));
    }

    private static PublicKey key(String text) throws Unsigned {
        try {
            return KeyFactory.getInstance("Ed25519")
                    .generatePublic(new X509EncodedKeySpec(Base64.getDecoder().decode(text)));
        } catch (GeneralSecurityException | IllegalArgumentException unfit) {
            throw new Unsigned(SignatureFlaw.Whole.NO_ED25519_KEY);
        }
    }

    private static Instant time(ObjectNode node) throws Unsigned {
        try {
            return Instant.parse(text(node, "at"));
        } catch (DateTimeException notATime) {
            throw new Unsigned(SignatureFlaw.Whole.NO_TIME);
        }
    }

    private static Optional<String> textIfThere(ObjectNode node, String key) throws Unsigned {
        return node.has(key) ? Optional.of(text(node, key)) : Optional.empty();
    }

    private static String text(ObjectNode node, String key) throws Unsigned {
        require(node.path(key).isTextual(), key);
        return node.get(key).textValue();
    }

    private static void require(boolean holds, String key) throws Unsigned {
        if (!holds) {
            throw new Unsigned(new SignatureFlaw.Unfit(key));
        }
    }

    /** What tells a key from every other: SHA-256 of it as X.509 writes it, 64 hexadecimal digits. */
    public String fingerprint() {
        return sha256(key.getEncoded());
    }

    /** SHA-256, 64 hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError("every Java platform has SHA-256", impossible);
        }
    }
}
