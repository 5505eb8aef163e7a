package dryfloor.analysis.reference;

/** The laws that the program uses, each one line of the page on trust. */
enum Law {
  DENSITY("density of water", "EOS-80 at atmospheric pressure"),
  VISCOSITY("viscosity of water", "Sharqawy and others 2010"),
  VAPOUR_PRESSURE("vapour pressure", "IAPWS-IF97"),
  FRICTION("pipe friction factor", "Churchill 1977"),
  PIPES("head lost in full pipes", "Darcy–Weisbach with fittings"),
  FITTINGS("fittings", "table of loss coefficients"),
  VALVES("valves", "Kv, IEC 60534"),
  PUMPS("pumps", "monotone curve through the maker's points, affinity laws"),
  HOLES("holes", "Torricelli with a coefficient by kind"),
  EMPTYING("vessels that empty or level out", "simulation and laws over time"),
  WEIRS("weirs", "Poleni with Rehbock's coefficient, Villemonte"),
  LIPS("lips of standpipes", "ring weir, then orifice"),
  PARTLY_FULL("partly full pipes", "Manning"),
  UPRIGHT_DRAINS("upright drains", "film on the wall; Froude number 0.3"),
  SIPHONS("siphons and suction", "energy balance and vapour pressure"),
  AIR("air carried down", "Wisner and others 1975"),
  NETWORKS("pipes that meet", "simulation, one convex minimum");

  private final String subject;
  private final String method;

  Law(String subject, String method) {
    this.subject = subject;
    this.method = method;
  }

  /** What it is about, in words. */
  String subject() {
    return subject;
  }

  /** What the program takes for it. */
  String method() {
    return method;
  }
}
