package everyblade.practice.eye;

/** Something that happened to a surface, in the frame of its solid standing at clock 0, mm. */
public interface Trace {

    /** Whether the metal is gone at a place: what is behind shows there. */
    default boolean gone(float x, float y, float z) {
        return false;
    }

    /** Whether {@link #gone} is ever true. */
    default boolean cuts() {
        return false;
    }

    /** How it changes the look of a spot; spots that it does not reach stay as they are. */
    void on(EyeSurface spot);
}
