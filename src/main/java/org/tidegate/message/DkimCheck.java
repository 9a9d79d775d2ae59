package org.tidegate.message;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.james.jdkim.DKIMVerifier;
import org.apache.james.jdkim.api.PublicKeyRecordRetriever;
import org.apache.james.jdkim.api.Result;
import org.apache.james.jdkim.api.SignatureRecord;
import org.apache.james.jdkim.exceptions.FailException;
import org.apache.james.jdkim.tagvalue.SignatureRecordImpl;

/** Verifies RSA signatures of DKIM (RFC 6376 §6) against recorded keys; asks no name server. Ed25519 (RFC 8463) stays unverified. */
final class DkimCheck {

    private DkimCheck() {}

    /** The same signatures, each marked whether it verified. Where several sign for one domain and selector, all must hold. */
    static List<DkimSignature> verified(byte[] raw, List<DkimSignature> signatures, KeySource keys) {
        boolean anyKey = signatures.stream()
                .anyMatch(s -> keys.record(s.selector(), s.domain()).isPresent());
        if (!anyKey) {
            return signatures;
        }
        List<Result> results = results(raw, keys);
        return signatures.stream().map(s -> marked(s, results)).toList();
    }

    private static DkimSignature marked(DkimSignature s, List<Result> results) {
        List<Result> own = results.stream()
                .filter(r -> r.getRecord() != null && isOf(r.getRecord(), s))
                .toList();
        boolean holds = !own.isEmpty() && own.stream().allMatch(Result::isSuccess);
        return new DkimSignature(s.domain(), s.selector(), s.time(), s.signedHeaders(), s.wholeBody(), holds);
    }

    private static boolean isOf(SignatureRecord record, DkimSignature s) {
        return s.domain().equals(record.getDToken().toString().toLowerCase(Locale.ROOT))
                && s.selector().contentEquals(record.getSelector());
    }

    private static List<Result> results(byte[] raw, KeySource keys) {
        DKIMVerifier verifier = new Verifier(retriever(keys));
        try {
            verifier.verify(new ByteArrayInputStream(withLineBreaks(raw)));
        } catch (IOException | FailException | RuntimeException e) {
            // What failed stands among the results; a message that cannot be parsed has none, so nothing verifies.
        }
        return List.copyOf(verifier.getResults());
    }

    private static PublicKeyRecordRetriever retriever(KeySource keys) {
        return (methods, selector, domain) -> keys.record(
                        selector.toString(), domain.toString().toLowerCase(Locale.ROOT))
                .map(List::of)
                .orElse(List.of());
    }

    /** RFC 6376 §5.3 signs lines that end in CRLF; files kept by mail programs often end them in LF alone. */
    private static byte[] withLineBreaks(byte[] raw) {
        Slice all = Slice.of(raw);
        ByteArrayOutputStream out = new ByteArrayOutputStream(raw.length + raw.length / 40);
        for (int at = 0; at < raw.length; ) {
            int next = all.nextLine(at);
            boolean bare = raw[next - 1] == '\n' && (next - 2 < at || raw[next - 2] != '\r');
            out.write(raw, at, bare ? next - 1 - at : next - at);
            if (bare) {
                out.write('\r');
                out.write('\n');
            }
            at = next;
        }
        return out.toByteArray();
    }

    /** Reads {@code x=} but does not judge it: whether a signature has expired depends on a clock, and a reading must not. */
    private static final class Verifier extends DKIMVerifier {

        Verifier(PublicKeyRecordRetriever keys) {
            super(keys);
        }

        @Override
        public SignatureRecord newSignatureRecord(String text) {
            return new SignatureRecordImpl(text) {
                @Override
                public void validate() {
                    try {
                        super.validate();
                    } catch (IllegalStateException e) {
                        if (!Optional.ofNullable(e.getMessage()).orElse("").contains("expired")) {
                            throw e;
                        }
                    }
                }
            };
        }
    }
}
