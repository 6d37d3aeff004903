package everyblade.json;

import everyblade.json.jar.PluginSide;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Starts the process in which the code of one jar runs. */
final class PluginMain {

    private PluginMain() {}

    /** Takes the jar, and the file that what it hands over is written to. */
    public static void main(String[] arguments) {
        PluginSide.run(
                Path.of(arguments[0]),
                Path.of(arguments[1]),
                EngineJsonReader.FILE,
                model -> EngineJsonWriter.write(model).getBytes(StandardCharsets.UTF_8));
    }
}
