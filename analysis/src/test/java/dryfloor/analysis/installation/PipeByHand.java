package dryfloor.analysis.installation;

/**
 * Flow through a pipe as one would work it out on paper, written apart from the engine:
 * Darcy–Weisbach with the friction factor of Colebrook, Journal of the Institution of Civil
 * Engineers 11 (1939) 133–156,
 *
 * <pre>1/√f = −2 log10( e/(3.7 D) + 2.51/(Re √f) )</pre>
 *
 * @param bore (m)
 * @param length (m)
 * @param roughness (m)
 * @param loss all else, on the velocity head
 * @param viscosity kinematic (m²/s)
 */
public record PipeByHand(
    double bore, double length, double roughness, double loss, double viscosity) {

  private static final double GRAVITY = 9.80665;

  /** Flow (m³/s) under a head (m). */
  public double flow(double head) {
    double velocity = 1;
    for (int i = 0; i < 200; i++) {
      double resistance = factor(velocity) * length / bore + loss;
      velocity = Math.sqrt(2 * GRAVITY * head / resistance);
    }
    return Math.PI / 4 * bore * bore * velocity;
  }

  private double factor(double velocity) {
    double reynolds = velocity * bore / viscosity;
    if (reynolds < 2100) {
      return 64 / reynolds;
    }
    double root = 0.15;
    for (int i = 0; i < 100; i++) {
      root = -0.5 / Math.log10(roughness / (3.7 * bore) + 2.51 / (reynolds * root));
    }
    return root * root;
  }

  /** Time (s) in which a tank of this area falls from one head to another, by Simpson's rule. */
  public double emptying(double area, double fromHead, double toHead) {
    int slices = 2000;
    double width = (fromHead - toHead) / slices;
    double sum = area / flow(fromHead) + area / flow(toHead);
    for (int i = 1; i < slices; i++) {
      sum += (i % 2 == 0 ? 2 : 4) * area / flow(toHead + i * width);
    }
    return sum * width / 3;
  }
}
