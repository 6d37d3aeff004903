package everyblade.json.jar;

/** A way in which a jar can fail to hand over engine models; its code is stable from version to version. */
public enum Fault {
    /** It is no zip file, or a damaged one. */
    BAD_JAR("bad-jar"),
    /** The file, what it unpacks to, or the number of its entries is beyond what a model needs. */
    JAR_TOO_LARGE("jar-too-large"),
    /** An entry's name would lead out of the folder in which the jar is unpacked. */
    NAME_OUTSIDE("name-outside-jar"),
    /** The manifest cannot be read, or says something that cannot be. */
    BAD_MANIFEST("bad-manifest"),
    /** The manifest says nothing of the plugin; refuses nothing. */
    NO_METADATA("no-plugin-version"),
    /** The plugin is for later versions of the plugin interface. */
    NEWER_SPI("newer-spi"),
    /** The plugin is for earlier versions of the plugin interface. */
    OLDER_SPI("older-spi"),
    /** The plugin is compiled for a later Java. */
    NEWER_JAVA("newer-java"),
    /** There is neither an {@code engine.json} nor a source of models in it. */
    NO_MODEL("no-model-in-jar"),
    /** Its code failed, or ended its process. */
    PLUGIN_FAILED("plugin-failed"),
    /** Its code took too long and was ended. */
    PLUGIN_TOO_SLOW("plugin-too-slow");

    private final String code;

    Fault(String code) {
        this.code = code;
    }

    /** As people read it. */
    public String code() {
        return code;
    }
}
