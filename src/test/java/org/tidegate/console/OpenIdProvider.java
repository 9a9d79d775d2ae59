package org.tidegate.console;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Base64;
import java.util.Date;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A provider after OpenID Connect Core 1.0 (3.1) with PKCE (RFC 7636) that vouches for whom the test says, and can misbehave. */
final class OpenIdProvider implements AutoCloseable {

    static final String CLIENT = "tidegate-pages";
    static final String SECRET = "client secret";

    private final HttpServer server;
    private final RSAKey known;
    private final RSAKey stranger;
    private final Map<String, Map<String, String>> asked = new HashMap<>();

    volatile String person = "anna";
    volatile Fault fault = Fault.NONE;

    /** One way of not keeping to the protocol. */
    enum Fault {
        NONE,
        OTHER_KEY,
        OTHER_NONCE,
        OTHER_AUDIENCE,
        OTHER_ISSUER,
        EXPIRED
    }

    OpenIdProvider() throws IOException, JOSEException {
        known = new RSAKeyGenerator(2048).keyID("known").generate();
        stranger = new RSAKeyGenerator(2048).keyID("known").generate();
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/.well-known/openid-configuration", e -> json(e, discovery()));
        server.createContext("/keys", e -> json(e, new JWKSet(known.toPublicJWK()).toString()));
        server.createContext("/authorize", this::authorize);
        server.createContext("/token", this::token);
        server.start();
    }

    String issuer() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    private String discovery() {
        String at = issuer();
        return """
                {"issuer":"%1$s","authorization_endpoint":"%1$s/authorize","token_endpoint":"%1$s/token",
                "jwks_uri":"%1$s/keys","response_types_supported":["code"],"subject_types_supported":["public"],
                "id_token_signing_alg_values_supported":["RS256"]}""".formatted(at);
    }

    private void authorize(HttpExchange exchange) throws IOException {
        Map<String, String> query = form(exchange.getRequestURI().getRawQuery());
        String code = "code-" + asked.size();
        asked.put(code, query);
        exchange.getResponseHeaders()
                .add("Location", query.get("redirect_uri") + "?code=" + code + "&state=" + encode(query.get("state")));
        exchange.sendResponseHeaders(302, -1);
        exchange.close();
    }

    private void token(HttpExchange exchange) throws IOException {
        Map<String, String> form = form(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
        Map<String, String> query =
                Optional.ofNullable(asked.remove(form.get("code"))).orElse(Map.of());
        if (!challenge(form.getOrDefault("code_verifier", "")).equals(query.get("code_challenge"))) {
            answer(exchange, 400, "{\"error\":\"invalid_grant\"}");
            return;
        }
        json(
                exchange,
                "{\"access_token\":\"a\",\"token_type\":\"Bearer\",\"expires_in\":60,\"id_token\":\""
                        + idToken(query.getOrDefault("nonce", "")) + "\"}");
    }

    private String idToken(String nonce) {
        Instant now = Instant.now();
        JWTClaimsSet claims = new JWTClaimsSet.Builder()
                .issuer(fault == Fault.OTHER_ISSUER ? "http://127.0.0.1:1" : issuer())
                .audience(fault == Fault.OTHER_AUDIENCE ? "other-pages" : CLIENT)
                .subject(person)
                .issueTime(Date.from(now.minusSeconds(1000)))
                .expirationTime(Date.from(fault == Fault.EXPIRED ? now.minusSeconds(600) : now.plusSeconds(600)))
                .claim("nonce", fault == Fault.OTHER_NONCE ? "replayed" : nonce)
                .build();
        try {
            SignedJWT token = new SignedJWT(
                    new JWSHeader.Builder(JWSAlgorithm.RS256).keyID("known").build(), claims);
            token.sign(new RSASSASigner(fault == Fault.OTHER_KEY ? stranger : known));
            return token.serialize();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String challenge(String verifier) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(verifier.getBytes(StandardCharsets.US_ASCII));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void json(HttpExchange exchange, String body) throws IOException {
        answer(exchange, 200, body);
    }

    private static void answer(HttpExchange exchange, int status, String body) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().add("Content-Type", "application/json");
        exchange.sendResponseHeaders(status, bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private static Map<String, String> form(String text) {
        Map<String, String> values = new HashMap<>();
        for (String pair : text.split("&")) {
            String[] both = pair.split("=", 2);
            values.put(decode(both[0]), both.length > 1 ? decode(both[1]) : "");
        }
        return values;
    }

    private static String decode(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
