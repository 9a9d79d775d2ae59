package org.tidegate.thirdhand;

/** In space: x and y on the table, z up. */
record Vector(double x, double y, double z) {

    Vector unit() {
        double length = Math.sqrt(dot(this));
        return new Vector(x / length, y / length, z / length);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector o) {
        return new Vector(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    Vector plus(Vector other, double times) {
        return new Vector(x + times * other.x, y + times * other.y, z + times * other.z);
    }
}
