package dryfloor.analysis.generated;

import dryfloor.model.Installation;
import java.util.List;

/** A building described: what its units are, in the order of their names a, b, c. */
public record Building(Premises premises, List<Unit> units) {

  public Building {
    units = List.copyOf(units);
  }

  public Installation draw() {
    Site site = new Site(premises);
    for (int i = 0; i < units.size(); i++) {
      units.get(i).draw(site, (char) ('a' + i) + "-");
    }
    return site.draw();
  }

  @Override
  public String toString() {
    StringBuilder words = new StringBuilder(premises.toString());
    for (int i = 0; i < units.size(); i++) {
      words.append("; ").append((char) ('a' + i)).append(": ").append(units.get(i).sentence());
    }
    return words.append('.').toString();
  }
}
