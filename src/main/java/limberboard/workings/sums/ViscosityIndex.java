package limberboard.workings.sums;

/**
 * The viscosity index by ISO 2909 and ASTM D2270: how much less an oil thins with warmth than two
 * reference oils, L and H, that are as thick as it is at 100 °C. L and H are taken from the
 * quadratic pieces of D2270's appendix (first, second and last row compared with a published copy,
 * the rest from memory and held by published pairs in the test).
 */
final class ViscosityIndex {
  private static final double[][] PIECES = {
    {2.0, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077},
    {3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183},
    {4.4, 2.5000, -7.2143, 13.812, 0.82143, 1.5679, 0.119},
    {5.0, 0.10100, 16.6350, -45.469, 0.04985, 9.1613, -18.557},
    {6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656},
    {7.0, 0.01191, 21.4750, -72.870, 0.79762, -0.7321, 14.610},
    {7.7, 0.41858, 16.1558, -56.040, 0.05794, 10.5156, -28.240},
    {9.0, 0.88779, 7.5527, -16.600, 0.26665, 6.7015, -10.810},
    {12, 0.76720, 10.7972, -38.180, 0.20073, 8.4658, -22.490},
    {15, 0.97305, 5.3135, -2.200, 0.28889, 5.9741, -4.930},
    {18, 0.97256, 5.2500, -0.980, 0.24504, 7.4160, -16.730},
    {22, 0.91413, 7.4759, -21.820, 0.20323, 9.1267, -34.230},
    {28, 0.87031, 9.7157, -50.770, 0.18411, 10.1015, -46.750},
    {40, 0.84703, 12.6752, -133.310, 0.17029, 11.4866, -80.620},
    {55, 0.85921, 11.1009, -83.19, 0.17130, 11.3680, -76.940},
    {70, 0.83531, 14.6731, -216.246, 0.16841, 11.8493, -96.947}
  };
  private static final double HUNDRED = 100;
  private static final double ABOVE = 0.00715;
  private static final double LEAST_AT_100 = 2;
  private static final int HALVINGS = 60;

  private ViscosityIndex() {}

  /** The index of an oil; viscosities in mm²/s, at 100 °C at least 2. */
  static double of(double at40, double at100) {
    double[] piece = piece(at100);
    double l = square(piece, 1, at100);
    double h = square(piece, 4, at100);
    if (at40 >= h) {
      return (l - at40) / (l - h) * HUNDRED;
    }
    double n = Math.log10(h / at40) / Math.log10(at100);
    return (Math.pow(10, n) - 1) / ABOVE + HUNDRED;
  }

  /** The viscosity at 100 °C of an oil of which the index is known, mm²/s. */
  static double at100(double at40, double index) {
    double low = LEAST_AT_100;
    double high = at40;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean tooThin = of(at40, middle) < index;
      low = tooThin ? middle : low;
      high = tooThin ? high : middle;
    }
    return (low + high) / 2;
  }

  private static double[] piece(double at100) {
    double[] found = PIECES[0];
    for (double[] piece : PIECES) {
      found = piece[0] <= at100 ? piece : found;
    }
    return found;
  }

  private static double square(double[] piece, int from, double y) {
    return piece[from] * y * y + piece[from + 1] * y + piece[from + 2];
  }
}
