package org.tidegate.examination.timing;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Optional;
import java.util.regex.Pattern;

/** A network in CIDR notation (RFC 4632, RFC 4291 §2.3). */
record Cidr(byte[] prefix, int bits) {

    private static final Pattern LITERAL = Pattern.compile("[0-9.]{7,15}|[0-9a-fA-F:.]*:[0-9a-fA-F:.]*");

    /** Reads {@code 10.0.0.0/8}, {@code fc00::/7} or a bare address; empty where it is neither. */
    static Optional<Cidr> parse(String text) {
        int slash = text.indexOf('/');
        Optional<byte[]> address = address(slash < 0 ? text : text.substring(0, slash));
        if (address.isEmpty()) {
            return Optional.empty();
        }
        int most = address.get().length * 8;
        if (slash < 0) {
            return Optional.of(new Cidr(address.get(), most));
        }
        String length = text.substring(slash + 1);
        if (!length.matches("\\d{1,3}") || Integer.parseInt(length) > most) {
            return Optional.empty();
        }
        return Optional.of(new Cidr(address.get(), Integer.parseInt(length)));
    }

    boolean contains(String address) {
        return address(address).filter(this::covers).isPresent();
    }

    private boolean covers(byte[] address) {
        if (address.length != prefix.length) {
            return false;
        }
        for (int bit = 0; bit < bits; bit++) {
            int mask = 0x80 >> (bit & 7);
            if ((address[bit >> 3] & mask) != (prefix[bit >> 3] & mask)) {
                return false;
            }
        }
        return true;
    }

    /** Only literals are parsed, so no name is ever looked up. */
    private static Optional<byte[]> address(String text) {
        String literal = text.strip();
        if (literal.regionMatches(true, 0, "IPv6:", 0, 5)) {
            literal = literal.substring(5);
        }
        if (!LITERAL.matcher(literal).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(InetAddress.getByName(literal).getAddress());
        } catch (UnknownHostException e) {
            return Optional.empty();
        }
    }
}
