package limberboard.workings.sums;

/**
 * A metric thread and the head above it; all in mm.
 *
 * @param diameter outside diameter d
 * @param pitch pitch P
 * @param face outside diameter of the head's bearing face
 * @param hole diameter of the hole under the head
 */
record ThreadSize(double diameter, double pitch, double face, double hole) {
  private static final double TO_PITCH_DIAMETER = 0.649519;
  private static final double TO_ROOT_DIAMETER = 1.226869;

  /** Pitch diameter d₂: ISO 724. */
  double pitchDiameter() {
    return diameter - TO_PITCH_DIAMETER * pitch;
  }

  /** Root diameter d₃: ISO 898-1. */
  double rootDiameter() {
    return diameter - TO_ROOT_DIAMETER * pitch;
  }

  /** Diameter of the stress area. */
  double stressDiameter() {
    return (pitchDiameter() + rootDiameter()) / 2;
  }

  /** Stress area, mm²: ISO 898-1. */
  double stressArea() {
    return Math.PI / 4 * stressDiameter() * stressDiameter();
  }

  /**
   * The preload at which a share of the 0.2 % stress is used while the bolt is being turned, N:
   * tension and twist together by von Mises (VDI 2230).
   *
   * @param stress the 0.2 % stress, N/mm²
   * @param share the share of it, above 0
   * @param friction friction in the thread
   */
  double preload(double stress, double share, double friction) {
    double turn = pitch / (Math.PI * pitchDiameter()) + 1.155 * friction;
    double twist = 1.5 * pitchDiameter() / stressDiameter() * turn;
    return stressArea() * stress * share / Math.sqrt(1 + 3 * twist * twist);
  }

  /**
   * The torque for a preload, Nm: Kellermann and Klein (VDI 2230).
   *
   * @param preload N
   * @param friction friction in the thread and under the head
   */
  double torque(double preload, double friction) {
    double arm = 0.159 * pitch + 0.578 * pitchDiameter() * friction + (face + hole) / 4 * friction;
    return preload * arm / 1000;
  }
}
