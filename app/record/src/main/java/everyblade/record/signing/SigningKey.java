package everyblade.record.signing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Collections;
import java.util.Date;
import java.util.Optional;
import org.bouncycastle.asn1.ASN1ObjectIdentifier;
import org.bouncycastle.asn1.ASN1String;
import org.bouncycastle.asn1.x500.RDN;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * A key to sign with and the person whose it is, kept as PKCS12 (RFC 7292) under a passphrase. Name, licence and number
 * stand in the certificate beside the key, which the key itself has signed: it binds nobody else to anything.
 *
 * @param signer whose key it is
 * @param privateKey Ed25519
 * @param publicKey of the same pair
 */
public record SigningKey(Signer signer, PrivateKey privateKey, PublicKey publicKey) {

    private static final String ALIAS = "everyblade";

    /** What RFC 5280, 4.1.2.5 has for a certificate without an end. */
    private static final Instant NO_END = Instant.parse("9999-12-31T23:59:59Z");

    /** Makes a new key. */
    public static SigningKey make(Signer signer) {
        try {
            KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
            return new SigningKey(signer, pair.getPrivate(), pair.getPublic());
        } catch (GeneralSecurityException impossible) {
            throw new AssertionError("every Java platform since 15 has Ed25519", impossible);
        }
    }

    /**
     * The bytes of a PKCS12 file with this key.
     *
     * @param now from when on the key is there
     */
    public byte[] kept(char[] passphrase, Instant now) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry(ALIAS, privateKey, passphrase, new Certificate[] {certificate(now)});
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            store.store(bytes, passphrase);
            return bytes.toByteArray();
        } catch (GeneralSecurityException | IOException | OperatorCreationException impossible) {
            throw new IllegalStateException("a key could not be kept in memory", impossible);
        }
    }

    private X509Certificate certificate(Instant now) throws OperatorCreationException, GeneralSecurityException {
        X500NameBuilder name = new X500NameBuilder(BCStyle.INSTANCE).addRDN(BCStyle.CN, signer.name());
        signer.licence().ifPresent(licence -> name.addRDN(BCStyle.T, licence));
        signer.number().ifPresent(number -> name.addRDN(BCStyle.SERIALNUMBER, number));
        X500Name subject = name.build();
        BigInteger serial = new BigInteger(120, new SecureRandom()).add(BigInteger.ONE);
        return new JcaX509CertificateConverter()
                .getCertificate(new JcaX509v3CertificateBuilder(
                                subject, serial, Date.from(now), Date.from(NO_END), subject, publicKey)
                        .build(new JcaContentSignerBuilder("Ed25519").build(privateKey)));
    }

    /**
     * Opens a key file.
     *
     * @throws Unsigned if the passphrase is another, or there is no key in it that can sign
     */
    public static SigningKey open(byte[] file, char[] passphrase) throws Unsigned {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(file), passphrase);
            for (String alias : Collections.list(store.aliases())) {
                if (store.getCertificate(alias) instanceof X509Certificate certificate
                        && store.getKey(alias, passphrase) instanceof PrivateKey key
                        && isEd25519(certificate.getPublicKey())) {
                    return new SigningKey(signer(certificate), key, certificate.getPublicKey());
                }
            }
            throw new Unsigned(KeyFlaw.NONE_IN_IT);
        } catch (IOException unreadable) {
            throw new Unsigned(
                    unreadable.getCause() instanceof UnrecoverableKeyException
                            ? KeyFlaw.OTHER_PASSPHRASE
                            : KeyFlaw.NO_KEY_FILE);
        } catch (GeneralSecurityException unreadable) {
            throw new Unsigned(KeyFlaw.NOT_READ);
        }
    }

    private static boolean isEd25519(PublicKey key) {
        return key instanceof java.security.interfaces.EdECPublicKey edwards
                && edwards.getParams().getName().equals("Ed25519");
    }

    private static Signer signer(X509Certificate certificate) throws GeneralSecurityException {
        X500Name subject = new JcaX509CertificateHolder(certificate).getSubject();
        return new Signer(
                value(subject, BCStyle.CN).orElse("(no name)"),
                value(subject, BCStyle.T),
                value(subject, BCStyle.SERIALNUMBER));
    }

    private static Optional<String> value(X500Name name, ASN1ObjectIdentifier kind) {
        RDN[] found = name.getRDNs(kind);
        return found.length > 0 && found[0].getFirst().getValue() instanceof ASN1String text
                ? Optional.of(text.getString())
                : Optional.empty();
    }

    /** What tells this key from every other: {@link SignatureFile#fingerprint}. */
    public String fingerprint() {
        return SignatureFile.sha256(publicKey.getEncoded());
    }
}
