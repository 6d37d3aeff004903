package everyblade.record.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.record.English;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.oiw.OIWObjectIdentifiers;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.DigestCalculator;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;
import org.bouncycastle.tsp.TSPAlgorithms;
import org.bouncycastle.tsp.TimeStampRequest;
import org.bouncycastle.tsp.TimeStampRequestGenerator;
import org.bouncycastle.tsp.TimeStampTokenGenerator;
import org.junit.jupiter.api.Test;

/** Signatures of a journal of five entries whose hashes are the digit of each, over and over. */
class CheckedSignatureTest {

    private static final Instant TIME = Instant.parse("2026-03-01T08:00:00Z");
    private static final SigningKey ANN =
            SigningKey.make(new Signer("Ann Vane, \"B1\" + O=x", Optional.of("Part-66"), Optional.of("X 1")));
    private static final SigningKey BO = SigningKey.make(new Signer("Bö", Optional.empty(), Optional.empty()));

    private static String hash(int k) {
        return Integer.toString(k).repeat(64);
    }

    private static Statement says(SignedAs as, SigningKey key, int entries, Optional<byte[]> before) {
        return new Statement(
                as,
                key.signer(),
                TIME,
                hash(0),
                entries,
                hash(entries),
                "1 a",
                Map.of("findings", "3"),
                Optional.empty(),
                before.map(SignatureFile::sha256));
    }

    private static byte[] signed(SignedAs as, SigningKey key, int entries, byte[]... before) {
        Optional<byte[]> last = before.length == 0 ? Optional.empty() : Optional.of(before[before.length - 1]);
        return SignatureFile.write(says(as, key, entries, last), key);
    }

    private static List<CheckedSignature> checked(byte[]... files) {
        List<Kept> kept = new ArrayList<>();
        for (int i = 0; i < files.length; i++) {
            if (files[i] != null) {
                kept.add(new Kept(i + 1, new Kept.Bytes(files[i]), Optional.empty()));
            }
        }
        return CheckedSignature.all(kept, 5, CheckedSignatureTest::hash);
    }

    @Test
    void isSoundAndTellsHowMuchCameAfter() {
        byte[] first = signed(SignedAs.INSPECTED, ANN, 3);
        byte[] second = signed(SignedAs.REVIEWED, BO, 5, first);

        List<CheckedSignature> checked = checked(first, second);

        assertThat(checked).allMatch(CheckedSignature::isSound);
        assertThat(checked).extracting(CheckedSignature::after).containsExactly(2, 0);
        assertThat(checked.get(0).file().orElseThrow().statement())
                .isEqualTo(says(SignedAs.INSPECTED, ANN, 3, Optional.empty()));
    }

    @Test
    void theSameStatementIsSignedTheSame() {
        assertThat(signed(SignedAs.INSPECTED, ANN, 3)).isEqualTo(signed(SignedAs.INSPECTED, ANN, 3));
    }

    @Test
    void withAnyByteChangedCountsForNothing() {
        byte[] whole = signed(SignedAs.INSPECTED, ANN, 5);
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            assertThat(checked(changed).get(0).wrong()).as("byte " + at).isNotEmpty();
        }
    }

    @Test
    void whoseKeyWasPutInThePlaceOfAnotherCountsForNothing() {
        String own = new String(signed(SignedAs.INSPECTED, BO, 5), StandardCharsets.UTF_8);
        String ann = new String(signed(SignedAs.INSPECTED, ANN, 5), StandardCharsets.UTF_8);
        String key = ann.replaceAll("(?s).*\"key\":\"|\",\"signature.*", "");
        String forged = own.replaceAll("\"key\":\"[^\"]*\"", "\"key\":\"" + key + "\"");
        assertThat(checked(forged.getBytes(StandardCharsets.UTF_8)).get(0).wrong())
                .extracting(English::said)
                .containsExactly("it does not fit what it signs, so one of the two was changed");
    }

    @Test
    void ofAnotherJobOrOfAnEntryThatIsNowAnotherOrOfMoreThanThereIsCountsForNothing() {
        Statement here = says(SignedAs.INSPECTED, ANN, 4, Optional.empty());
        assertThat(wrong(here, hash(7), 4, hash(4))).containsExactly("it is of another job");
        assertThat(wrong(here, hash(0), 4, hash(3)))
                .singleElement()
                .asString()
                .startsWith("entry 4 is no longer the one that was signed");
        assertThat(wrong(here, hash(0), 6, hash(6)))
                .singleElement()
                .asString()
                .contains("ends with entry 5", "cut short");
        assertThat(wrong(here, hash(0), -1, hash(6))).hasSize(1);
    }

    private static List<String> wrong(Statement here, String journal, int entries, String head) {
        Statement other = new Statement(
                here.as(),
                here.signer(),
                here.at(),
                journal,
                entries,
                head,
                here.program(),
                here.figures(),
                here.because(),
                here.before());
        return checked(SignatureFile.write(other, ANN)).get(0).wrong().stream()
                .map(English::said)
                .toList();
    }

    @Test
    void oneThatIsMissingOrExchangedShowsInTheOneAfterIt() {
        byte[] first = signed(SignedAs.INSPECTED, ANN, 3);
        byte[] second = signed(SignedAs.REVIEWED, BO, 3, first);

        assertThat(checked(null, second).get(0).wrong())
                .extracting(English::said)
                .containsExactly("signature 1, which was made before it, is missing");
        assertThat(checked(second).get(0).wrong())
                .singleElement()
                .extracting(English::said)
                .asString()
                .contains("not the one that was there");
        assertThat(checked(signed(SignedAs.INSPECTED, ANN, 4), second).get(1).wrong())
                .singleElement()
                .extracting(English::said)
                .asString()
                .contains("not the one that was there");
    }

    @Test
    void ofOneKeyInBothRolesTheLaterCountsForNothing() {
        byte[] first = signed(SignedAs.INSPECTED, ANN, 3);
        assertThat(checked(first, signed(SignedAs.RETURNED, ANN, 3, first))
                        .get(1)
                        .wrong())
                .singleElement()
                .extracting(English::said)
                .asString()
                .contains("its key made signature 1 as inspected");
        assertThat(checked(first, signed(SignedAs.INSPECTED, ANN, 5, first))
                        .get(1)
                        .wrong())
                .isEmpty();
    }

    @Test
    void aKeyComesBackFromItsFileWithItsOwnersNameAndOnlyByItsPassphrase() throws Unsigned {
        byte[] file = ANN.kept("eight letters".toCharArray(), TIME);

        SigningKey back = SigningKey.open(file, "eight letters".toCharArray());

        assertThat(back.signer()).isEqualTo(ANN.signer());
        assertThat(signed(SignedAs.INSPECTED, back, 2)).isEqualTo(signed(SignedAs.INSPECTED, ANN, 2));
        assertThatThrownBy(() -> SigningKey.open(file, "eight lettres".toCharArray()))
                .isInstanceOfSatisfying(
                        Unsigned.class,
                        unsigned ->
                                assertThat(English.said(unsigned.why())).isEqualTo("the passphrase does not open it"));
    }

    @Test
    void aTimeStampTellsWhenItWasThereAndThatOfAnotherFileIsRefused() throws Exception {
        byte[] signature = signed(SignedAs.INSPECTED, ANN, 5);
        byte[] stamp = stamp(signature);

        assertThat(TimeStamp.read(stamp, signature)).isEqualTo(new TimeStamp(TIME, "CN=An invented authority"));

        Kept kept = new Kept(1, new Kept.Bytes(signature), Optional.of(stamp(new byte[] {1})));
        assertThat(CheckedSignature.all(List.of(kept), 5, CheckedSignatureTest::hash)
                        .get(0)
                        .wrong())
                .extracting(English::said)
                .containsExactly("its time stamp: it is the stamp of another file");
        byte[] changed = stamp.clone();
        changed[changed.length - 1] ^= 1;
        assertThatThrownBy(() -> TimeStamp.read(changed, signature)).isInstanceOf(Unsigned.class);
        assertThatThrownBy(() -> TimeStamp.read(new byte[] {1, 2}, signature))
                .isInstanceOfSatisfying(
                        Unsigned.class,
                        unsigned ->
                                assertThat(English.said(unsigned.why())).isEqualTo("it is no time stamp by RFC 3161"));
    }

    /** As an authority makes it, by RFC 3161. */
    private static byte[] stamp(byte[] file) throws Exception {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(256);
        KeyPair pair = generator.generateKeyPair();
        X500Name name = new X500Name("CN=An invented authority");
        JcaX509v3CertificateBuilder certificate = new JcaX509v3CertificateBuilder(
                name,
                BigInteger.ONE,
                Date.from(TIME.minusSeconds(60)),
                Date.from(TIME.plusSeconds(60)),
                name,
                pair.getPublic());
        certificate.addExtension(
                Extension.extendedKeyUsage, true, new ExtendedKeyUsage(KeyPurposeId.id_kp_timeStamping));
        X509CertificateHolder holder =
                certificate.build(new JcaContentSignerBuilder("SHA256withECDSA").build(pair.getPrivate()));
        DigestCalculator sha1 = new JcaDigestCalculatorProviderBuilder()
                .build()
                .get(new AlgorithmIdentifier(OIWObjectIdentifiers.idSHA1));
        TimeStampTokenGenerator tokens = new TimeStampTokenGenerator(
                new JcaSignerInfoGeneratorBuilder(new JcaDigestCalculatorProviderBuilder().build())
                        .build(new JcaContentSignerBuilder("SHA256withECDSA").build(pair.getPrivate()), holder),
                sha1,
                new ASN1ObjectIdentifier("1.2.3"));
        tokens.addCertificates(new JcaCertStore(List.of(holder)));
        TimeStampRequestGenerator requests = new TimeStampRequestGenerator();
        requests.setCertReq(true);
        TimeStampRequest request = requests.generate(
                TSPAlgorithms.SHA256, MessageDigest.getInstance("SHA-256").digest(file));
        return tokens.generate(request, BigInteger.TWO, Date.from(TIME)).getEncoded();
    }
}
