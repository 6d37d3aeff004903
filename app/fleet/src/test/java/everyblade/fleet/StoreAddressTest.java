package everyblade.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.fleet.StoreRefusal.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An address holds no secret, and what leaves the machine is encrypted for a server that proves who it is. */
class StoreAddressTest {

    @Test
    void saysWhoAndWhere() throws StoreRefusal {
        assertThat(StoreAddress.of("postgresql://ada@db.example/fleet"))
                .isEqualTo(new StoreAddress("ada", "db.example", 5432, "fleet", Optional.empty()));
        assertThat(StoreAddress.of("postgresql://ada@[::1]:6000/fleet?sslrootcert=/etc/shop.pem"))
                .isEqualTo(new StoreAddress("ada", "::1", 6000, "fleet", Optional.of("/etc/shop.pem")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "fleet",
                "jdbc:postgresql://ada@db/fleet",
                "postgresql://db/fleet",
                "postgresql://ada@db",
                "postgresql://ada@db/fleet/more",
                "postgresql://ada@db/fleet?sslmode=disable",
                "postgresql://ada@db/fleet?sslrootcert=x&sslmode=disable",
                "postgresql://ada@db/fle et"
            })
    void anythingElseIsNoAddress(String text) {
        assertThat(refusal(text).reason()).isEqualTo(Reason.WRONG_ADDRESS);
    }

    @Test
    void aPasswordInItIsRefusedAndNotRepeated() {
        StoreRefusal refusal = refusal("postgresql://ada:hidden@db/fleet");

        assertThat(refusal.reason()).isEqualTo(Reason.SECRET_IN_ADDRESS);
        assertThat(refusal).hasMessageNotContaining("hidden");
        assertThat(refusal("postgres://ada:hidden@db/fl eet")).hasMessageNotContaining("hidden");
    }

    private static StoreRefusal refusal(String address) {
        return catchThrowableOfType(StoreRefusal.class, () -> StoreAddress.of(address));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"db.example", "10.0.0.7", "localhost.example", "128.0.0.1", "127.evil.example", "[fe80::1]"})
    void offThisMachineTheServerMustProveWhoItIs(String host) throws StoreRefusal {
        Properties properties =
                StoreAddress.of("postgresql://ada@" + host + "/fleet").properties(Optional.empty());

        assertThat(properties).containsEntry("sslmode", "verify-full");
        assertThat(properties).containsEntry("sslfactory", "org.postgresql.ssl.DefaultJavaSSLFactory");
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "127.3.2.1", "[::1]"})
    void onItNobodyListens(String host) throws StoreRefusal {
        assertThat(StoreAddress.of("postgresql://ada@" + host + "/fleet").properties(Optional.empty()))
                .containsEntry("sslmode", "prefer");
    }

    @Test
    void thePasswordIsFoundInTheEnvironmentOrInAFileThatOnlyItsOwnerReads(@TempDir Path temp)
            throws StoreRefusal, IOException {
        StoreAddress address = StoreAddress.of("postgresql://ada@db/fleet");
        Path file = Files.writeString(temp.resolve("secret"), "from the file\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        Map<String, String> environment = Map.of("EVERYBLADE_STORE_PASSWORD", "from the environment");

        assertThat(new StoreSecret(environment, Optional.empty()).of(address)).contains("from the environment");
        assertThat(new StoreSecret(environment, Optional.of(file)).of(address)).contains("from the file");
        assertThat(new StoreSecret(Map.of(), Optional.empty()).of(address)).isEmpty();

        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        StoreRefusal refusal = catchThrowableOfType(
                StoreRefusal.class, () -> new StoreSecret(environment, Optional.of(file)).of(address));
        assertThat(refusal.reason()).isEqualTo(Reason.UNSAFE_SECRET);
        assertThat(new StoreSecret(environment, Optional.empty())).hasToString("Secret");
    }
}
