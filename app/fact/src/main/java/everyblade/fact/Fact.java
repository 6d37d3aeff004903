package everyblade.fact;

/**
 * Something that a person is to be told. A record is told by the pattern of its name, in which the places are its
 * components; a constant of an enum by the pattern of its own name. Nothing in it is worded: it holds numbers, names that
 * people gave, entries as they are typed, and other facts.
 */
public interface Fact {

    /** By what name its pattern is found: the last part of its package, and the names of its classes, such as {@code turning.Stopped.NoView}. */
    default String key() {
        Class<?> type = this instanceof Enum<?> constant ? constant.getDeclaringClass() : getClass();
        String name =
                type.getName().substring(type.getPackageName().length() + 1).replace('$', '.');
        String area = type.getPackageName().substring(type.getPackageName().lastIndexOf('.') + 1);
        return area + "." + name + (this instanceof Enum<?> constant ? "." + constant.name() : "");
    }
}
