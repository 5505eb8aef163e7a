package dryfloor.app.shipped;

/** Example installations that the window can show without any file. */
public enum Example {
  FIRST_LOOK("first-look/as-drawn"),
  FIRST_LOOK_CORRECTED("first-look/corrected"),
  LOFT_RESERVOIR("loft-reservoir/as-drawn"),
  LOFT_RESERVOIR_CORRECTED("loft-reservoir/corrected"),
  RESTAURANT("restaurant-seafood/as-drawn"),
  RESTAURANT_CORRECTED("restaurant-seafood/corrected");

  private final String file;

  Example(String file) {
    this.file = file;
  }

  /** The bytes of the file. */
  public byte[] content() {
    return Shipped.bytes("/scenarios/" + file + ".json");
  }
}
