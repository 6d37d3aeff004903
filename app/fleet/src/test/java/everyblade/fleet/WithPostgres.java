package everyblade.fleet;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Tests against a real server, one for all of them. Where PostgreSQL is not installed they are left out, unless
 * {@code -Deveryblade.postgres.required=true} says that this must not be.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(WithPostgres.Server.class)
public @interface WithPostgres {

    /** Starts the server when it is first needed; the end of all tests ends it. */
    final class Server implements ExecutionCondition, ParameterResolver {

        private record Running(PostgresServer server) implements AutoCloseable {

            @Override
            public void close() {
                server.close();
            }
        }

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            boolean required = Boolean.getBoolean("everyblade.postgres.required");
            return required || PostgresServer.programs().isPresent()
                    ? ConditionEvaluationResult.enabled("PostgreSQL is there, or must be")
                    : ConditionEvaluationResult.disabled(
                            "PostgreSQL is not installed (apt-get install postgresql), so this is left out");
        }

        @Override
        public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
            return parameter.getParameter().getType() == PostgresServer.class;
        }

        @Override
        public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
            return context.getRoot()
                    .getStore(ExtensionContext.Namespace.GLOBAL)
                    .getOrComputeIfAbsent(
                            Running.class,
                            key -> new Running(PostgresServer.start(PostgresServer.QUICK)),
                            Running.class)
                    .server();
        }
    }
}
