package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Orifice;

/** Water that leaks from a full pipe into the air. Nothing is sucked in. */
final class HoleBranch extends Branch {

  private final double area;

  HoleBranch(int slot, int tee, double elevation, double area) {
    super(slot, 1, new BranchEnd.AtTee(tee), new BranchEnd.AtHead(elevation));
    this.area = area;
  }

  @Override
  void solve(double firstHead, double secondHead, double[] levels) {
    double head = firstHead - secondHead;
    flow = head > 0 ? Orifice.flow(Orifice.CRACK, area, head) : 0;
    flowPerHead = head > 0 ? Orifice.flowPerHead(Orifice.CRACK, area, head) : 0;
  }
}
