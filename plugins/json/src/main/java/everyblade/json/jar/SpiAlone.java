package everyblade.json.jar;

import everyblade.spi.EngineModelSource;

/** Sees the JDK and the plugin interface, and nothing else of the program. */
final class SpiAlone extends ClassLoader {

    private static final String SPI = EngineModelSource.class.getPackageName() + ".";

    SpiAlone() {
        super(ClassLoader.getPlatformClassLoader());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        if (name.startsWith(SPI)) {
            return Class.forName(name, false, EngineModelSource.class.getClassLoader());
        }
        throw new ClassNotFoundException(name);
    }
}
