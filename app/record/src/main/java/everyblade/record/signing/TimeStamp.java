package everyblade.record.signing;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import org.bouncycastle.asn1.nist.NISTObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.tsp.TSPException;
import org.bouncycastle.tsp.TimeStampResponse;
import org.bouncycastle.tsp.TimeStampToken;

/**
 * That a file was there at some time, as an authority for time stamps says (RFC 3161). Whether the authority is one to
 * believe is not judged: its certificate is held against no list.
 *
 * @param at when
 * @param authority as its certificate names it
 */
public record TimeStamp(Instant at, String authority) {

    private static final Map<String, String> DIGESTS = Map.of(
            NISTObjectIdentifiers.id_sha256.getId(), "SHA-256",
            NISTObjectIdentifiers.id_sha384.getId(), "SHA-384",
            NISTObjectIdentifiers.id_sha512.getId(), "SHA-512");

    /**
     * Reads a stamp, or the answer of an authority with a stamp in it, and checks that it is of this file.
     *
     * @throws Unsigned if it is none, or of another file
     */
    public static TimeStamp read(byte[] stamp, byte[] stamped) throws Unsigned {
        TimeStampToken token = token(stamp);
        String digest =
                DIGESTS.get(token.getTimeStampInfo().getMessageImprintAlgOID().getId());
        if (digest == null) {
            throw new Unsigned(StampFlaw.OTHER_HASH);
        }
        try {
            byte[] hash = MessageDigest.getInstance(digest).digest(stamped);
            if (!MessageDigest.isEqual(hash, token.getTimeStampInfo().getMessageImprintDigest())) {
                throw new Unsigned(StampFlaw.OF_ANOTHER_FILE);
            }
            @SuppressWarnings("unchecked") // the library says that they match the signer's identity
            Collection<X509CertificateHolder> signers = token.getCertificates().getMatches(token.getSID());
            X509CertificateHolder signer =
                    signers.stream().findFirst().orElseThrow(() -> new Unsigned(StampFlaw.NO_CERTIFICATE));
            token.validate(new JcaSimpleSignerInfoVerifierBuilder().build(signer));
            return new TimeStamp(
                    token.getTimeStampInfo().getGenTime().toInstant(),
                    signer.getSubject().toString());
        } catch (GeneralSecurityException | TSPException | OperatorCreationException unfit) {
            throw new Unsigned(StampFlaw.DOES_NOT_FIT);
        }
    }

    private static TimeStampToken token(byte[] stamp) throws Unsigned {
        try {
            TimeStampToken token = new TimeStampResponse(stamp).getTimeStampToken();
            if (token == null) {
                throw new Unsigned(StampFlaw.REFUSED);
            }
            return token;
        } catch (TSPException | IOException | RuntimeException noResponse) {
            try {
                return new TimeStampToken(new CMSSignedData(stamp));
            } catch (TSPException | IOException | CMSException | RuntimeException unreadable) {
                throw new Unsigned(StampFlaw.NO_STAMP);
            }
        }
    }
}
