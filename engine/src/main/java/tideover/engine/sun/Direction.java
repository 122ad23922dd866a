package tideover.engine.sun;

import tideover.engine.quantity.Units;

/** A unit vector from the ground: to the sun, or square out of a panel. */
record Direction(double east, double north, double up) {

    /** From the angle off straight overhead and the azimuth from north through east. A panel's tilt is such an angle too. */
    static Direction of(double zenithDeg, double azimuthDeg) {
        double zenithRad = Units.radians(zenithDeg);
        double azimuthRad = Units.radians(azimuthDeg);
        double across = StrictMath.sin(zenithRad);
        return new Direction(
                across * StrictMath.sin(azimuthRad), across * StrictMath.cos(azimuthRad), StrictMath.cos(zenithRad));
    }

    /** Cosine of the angle to another direction; negative behind the plane. */
    double cosineTo(double otherEast, double otherNorth, double otherUp) {
        return east * otherEast + north * otherNorth + up * otherUp;
    }

    double cosineTo(Direction other) {
        return cosineTo(other.east, other.north, other.up);
    }
}
