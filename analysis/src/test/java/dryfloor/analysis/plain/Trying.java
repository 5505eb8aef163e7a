package dryfloor.analysis.plain;
import dryfloor.analysis.failure.*;
import dryfloor.analysis.installation.*;
import dryfloor.analysis.outcome.*;
import dryfloor.model.*;
import java.nio.file.*;
import java.util.*;
public final class Trying {
  public static void main(String[] a) throws Exception {
    Installation in = Shipped.read(Path.of(a[0]));
    TwoAnswers two = new TwoAnswers(a[0].replaceAll(".*scenarios/",""), in, Integer.getInteger("steps",20000));
    if (a.length>2) { PlainSimulation n = PlainSimulation.normal(in, 200000); Outcome o = Trial.normal(in);
      for (Failure f : FailureCatalogue.of(in)) if (FailureNames.id(f).matches(a[1])) { n = PlainSimulation.failure(n, FailureResolver.resolve(in,f), Integer.getInteger("steps",20000)); o = Trial.after(in, f); break; }
      for (var v : o.vessels()) System.out.printf("   %-20s %.2f/%.2f spilled %.4f/%.4f%n", v.id(), (n.levels().get(v.id())-v.bottom())*1e3, (v.levelAfter()-v.bottom())*1e3, n.answer.spilled.getOrDefault(v.id(),0.0)*1e3, v.spilled()*1e3);
      for (Pipe q : n.house.pipes) System.out.printf("     %-18s %s from %.6g over %.6g to %.6g L/min A %.3f B %.3f L%n", q.run, q.full?"full":"open", q.flowFrom*6e4,q.over*6e4,q.flowTo*6e4,q.inA*1e3,q.inB*1e3);
      for (var t : o.ledger().standing()) System.out.println(t);
      System.out.printf("t %.1f steps %d%n", n.time, n.steps());
      return; }
    Comparison n = two.normalOperation(); System.out.println((n.agrees()?"ok  ":"DIFF")+n.row(""));
    for (Failure f : FailureCatalogue.of(in)) { String id = FailureNames.id(f); if (!id.matches(a[1])) continue; long t=System.nanoTime(); for (Comparison c : two.failures(id::equals)) System.out.println((c.agrees()?"ok  ":"DIFF")+c.row(String.format("%.1fs",(System.nanoTime()-t)/1e9))); }
  }
}
