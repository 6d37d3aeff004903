package everyblade.fact;

/**
 * Something that a person is to be told. A record is told by the pattern of its name, in which the places are its
 * components; a constant of an enum by the pattern of its own name. Nothing in it is worded: it holds numbers, names that
 * people gave, entries as they are typed, and other facts.
 */
public interface Fact {

    /** By what name its pattern is found: the last part of its package, and the names of its classes, such as {@code turning.Stopped.NoView}. */
    default String key() {
        return this instanceof Enum<?> constant
                ? key(constant.getDeclaringClass()) + "." + constant.name()
                : key(getClass());
    }

    /** The name of all facts of a class, without that of a constant. */
    static String key(Class<?> type) {
        String name =
                type.getName().substring(type.getPackageName().length() + 1).replace('$', '.');
        return type.getPackageName().substring(type.getPackageName().lastIndexOf('.') + 1) + "." + name;
    }
}
