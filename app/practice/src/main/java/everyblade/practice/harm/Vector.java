package everyblade.practice.harm;

/** A place or direction, mm. */
public record Vector(double x, double y, double z) {

    Vector plus(Vector other, double times) {
        return new Vector(x + times * other.x, y + times * other.y, z + times * other.z);
    }

    Vector minus(Vector other) {
        return plus(other, -1);
    }

    Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** How long it is. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    Vector unit() {
        return times(1 / length());
    }
}
