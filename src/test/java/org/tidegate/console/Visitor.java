package org.tidegate.console;

import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without a screen: keeps its cookies, follows nothing by itself. */
final class Visitor {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");

    private final String address;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private String token = "";

    private Visitor(String address) {
        this.address = address;
    }

    static Visitor at(String address) {
        return new Visitor(address);
    }

    static Visitor anonymous(Morning morning) {
        return at(morning.console.address());
    }

    static Visitor signedIn(Morning morning, String name) throws Exception {
        Visitor visitor = anonymous(morning);
        visitor.signIn(name, Morning.PASSWORD);
        return visitor;
    }

    /** @return where the answer sends the visitor */
    String signIn(String name, String password) throws Exception {
        get("sign-in");
        HttpResponse<String> answer = post("sign-in", Map.of("username", name, "password", password));
        String place = answer.headers().firstValue("Location").orElse("");
        if (!place.contains("error")) {
            get("find");
        }
        return place;
    }

    HttpResponse<String> get(String path) throws Exception {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(address + path)).build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        Matcher found = TOKEN.matcher(answer.body());
        if (found.find()) {
            token = found.group(1);
        }
        return answer;
    }

    /** With the token of the page that was looked at last. */
    HttpResponse<String> post(String path, Map<String, String> form) throws Exception {
        return send(path, form, Optional.of(token));
    }

    HttpResponse<String> postWithoutToken(String path, Map<String, String> form) throws Exception {
        return send(path, form, Optional.empty());
    }

    private HttpResponse<String> send(String path, Map<String, String> form, Optional<String> withToken)
            throws Exception {
        String body = form.entrySet().stream()
                        .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"))
                + withToken
                        .map(t -> "&_csrf=" + URLEncoder.encode(t, StandardCharsets.UTF_8))
                        .orElse("");
        return client.send(
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    String session() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(c -> c.getName().equals("tidegate"))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }
}
