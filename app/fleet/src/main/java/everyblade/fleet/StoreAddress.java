package everyblade.fleet;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;
import java.util.Properties;

/**
 * Where a store is: {@code postgresql://user@host:port/database}, with {@code ?sslrootcert=FILE} where the server's
 * certificate is signed by one that Java does not know.
 *
 * @param rootCertificate the file with that one
 */
public record StoreAddress(String user, String host, int port, String database, Optional<String> rootCertificate) {

    private static final int USUAL_PORT = 5432;
    private static final String ROOT = "sslrootcert=";

    /**
     * Reads an address.
     *
     * @throws StoreRefusal if it is none, or holds a password, which would be seen in lists of processes
     */
    public static StoreAddress of(String text) throws StoreRefusal {
        try {
            URI uri = new URI(text);
            String database = uri.getPath() == null ? "" : uri.getPath().replaceFirst("^/", "");
            String query = uri.getQuery() == null ? "" : uri.getQuery();
            boolean fits = "postgresql".equals(uri.getScheme())
                    && uri.getHost() != null
                    && uri.getUserInfo() != null
                    && !database.isEmpty()
                    && !database.contains("/")
                    && (query.isEmpty() || query.startsWith(ROOT) && !query.contains("&"))
                    && uri.getFragment() == null;
            if (uri.getUserInfo() != null && uri.getUserInfo().contains(":")) {
                throw new StoreRefusal(StoreRefusal.Reason.SECRET_IN_ADDRESS);
            }
            if (fits) {
                return new StoreAddress(
                        uri.getUserInfo(),
                        uri.getHost().replaceAll("^\\[|]$", ""),
                        uri.getPort() < 0 ? USUAL_PORT : uri.getPort(),
                        database,
                        Optional.of(query)
                                .filter(given -> !given.isEmpty())
                                .map(given -> given.substring(ROOT.length())));
            }
        } catch (URISyntaxException none) {
            // said below
        }
        throw new StoreRefusal(StoreRefusal.Reason.WRONG_ADDRESS, text.replaceAll(":[^:@/]*@", ":…@"));
    }

    /** Whether nothing leaves this machine on the way there. A name counts only if it is the usual one. */
    boolean isLoopback() {
        return host.equals("localhost") || host.matches("127(\\.[0-9]{1,3}){3}") || host.equals("::1");
    }

    String jdbc() {
        return "jdbc:postgresql://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port + "/"
                + java.net.URLEncoder.encode(database, java.nio.charset.StandardCharsets.UTF_8);
    }

    /** For the driver. Off this machine the server must prove by TLS that it is the one that was named. */
    Properties properties(Optional<String> password) {
        Properties properties = new Properties();
        properties.setProperty("user", user);
        password.ifPresent(secret -> properties.setProperty("password", secret));
        properties.setProperty("ApplicationName", "everyblade");
        properties.setProperty("connectTimeout", "10");
        properties.setProperty("socketTimeout", "120");
        properties.setProperty("tcpKeepAlive", "true");
        properties.setProperty("logServerErrorDetail", "false");
        properties.setProperty("sslmode", isLoopback() ? "prefer" : "verify-full");
        if (!isLoopback()) {
            rootCertificate.ifPresentOrElse(
                    file -> properties.setProperty("sslrootcert", file),
                    () -> properties.setProperty("sslfactory", "org.postgresql.ssl.DefaultJavaSSLFactory"));
        }
        return properties;
    }

    /** For people. */
    @Override
    public String toString() {
        return "postgresql://" + user + "@" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port + "/"
                + database;
    }
}
