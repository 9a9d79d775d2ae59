package org.tidegate.cli;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidegate.console.OpenId;
import picocli.CommandLine.Option;

/** The provider at which people may sign in (OpenID Connect); none leaves passwords only. */
final class OpenIdOptions {

    @Option(
            names = "--openid-issuer",
            paramLabel = "URL",
            description =
                    "OpenID Connect provider at which people may sign in as well; https, or http on this machine.")
    private @Nullable URI issuer;

    @Option(names = "--openid-client", paramLabel = "ID", description = "Name of these pages at the provider.")
    private @Nullable String client;

    @Option(
            names = "--openid-secret-file",
            paramLabel = "FILE",
            description = "File whose first line is the client's secret.")
    private @Nullable Path secretFile;

    @Option(
            names = "--openid-claim",
            paramLabel = "CLAIM",
            description = {
                "Claim that is a person's sign-in name here. Name another than the default only where the provider",
                "keeps it unique and never gives it to somebody else. Default: ${DEFAULT-VALUE}."
            },
            defaultValue = "sub")
    private String claim = "sub";

    @Option(
            names = "--public-address",
            paramLabel = "URL",
            description = "Address of the console as browsers see it; needed for --openid-issuer.")
    private @Nullable URI publicAddress;

    Optional<OpenId> openId() {
        if (issuer == null) {
            return Optional.empty();
        }
        if (client == null || secretFile == null || publicAddress == null) {
            throw new Refusal("--openid-issuer needs --openid-client, --openid-secret-file and --public-address.");
        }
        URI safe = safe(issuer, "--openid-issuer");
        return Optional.of(new OpenId(
                safe, client, Secrets.firstLine(secretFile), claim, safe(publicAddress, "--public-address")));
    }

    private static URI safe(URI address, String option) {
        boolean encrypted = "https".equals(address.getScheme());
        if (address.getHost() == null || !encrypted && !("http".equals(address.getScheme()) && isHere(address))) {
            throw new Refusal(option + " must be an https address; http only on this machine.");
        }
        return address;
    }

    private static boolean isHere(URI address) {
        try {
            return InetAddress.getByName(address.getHost()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
