package brightseam.bench;
import brightseam.planner.*;
public class PlanTry { public static void main(String[] a) {
  for (boolean att : new boolean[]{true,false}) for (Goal g : new Goal[]{new Goal.Soonest(), new Goal.ForSessions()}) for (int n : new int[]{5,20,60}) for (int h=1;h<=3;h++) {
   LineProblem p = TubeLine.of(n,h,att,g); 
   for (int ms : new int[]{0, 300, 2000}) { long t=System.nanoTime(); var pl = ListPlanner.plan(p, 1, () -> System.nanoTime()-t < ms*1000000L); 
   System.out.printf("%s %s %d %d: limit %d took %d: %s bound %d%n", att,g.getClass().getSimpleName(),n,h,ms,(System.nanoTime()-t)/1000000, pl.map(x -> ""+Measure.first(p,x)).orElse("none"), Bounds.first(p)); } } } }
