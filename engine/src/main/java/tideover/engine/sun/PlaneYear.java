package tideover.engine.sun;

/** A tilted plane through one year of sun geometry. */
public final class PlaneYear {
    private PlaneYear() {}

    /** Irradiance on the plane from what falls on the horizontal in that hour of the model year, W/m2. */
    public double planeWm2(int hour, double ghiWm2, double diffuseWm2) {
        return 0;
    }
}
