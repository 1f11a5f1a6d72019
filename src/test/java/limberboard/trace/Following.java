package limberboard.trace;

import java.util.BitSet;
import limberboard.trace.Advice.Option;

/**
 * What it costs on average to follow a policy to the end, by going through everything that can
 * happen.
 */
record Following(EffortModel model, Policy policy) {

  double minutes() {
    return minutes(model.beginning());
  }

  double minutes(Situation now) {
    Option option = policy.advise(model, now).best();
    return option.minutes()
        + switch (option.action()) {
          case YARD -> 0;
          case MEND -> afterMend(now, option.index());
          case CHECK -> afterCheck(now, option.index());
        };
  }

  private double afterMend(Situation now, int cause) {
    double[] weights = now.chances();
    double cured = weights[cause] * model.mends().get(cause).cures();
    if (cured > 1 - 1e-12) {
      return 0;
    }
    weights[cause] -= cured;
    BitSet tried = now.tried();
    tried.set(cause);
    BitSet open = now.open();
    open.or(model.mends().get(cause).access());
    return (1 - cured) * minutes(new Situation(Share.ofOne(weights), open, now.asked(), tried));
  }

  private double afterCheck(Situation now, int check) {
    BitSet asked = now.asked();
    asked.set(check);
    BitSet open = now.open();
    open.or(model.checks().get(check).access());
    double cantTell = model.checks().get(check).cantTell();
    double sum = cantTell * minutes(new Situation(now.chances(), open, asked, now.tried()));
    for (int answer = 0; answer < model.answers().answers(check); answer++) {
      double[] weights = now.chances();
      double chance = 0;
      for (int cause = 0; cause < weights.length; cause++) {
        weights[cause] *= model.answers().likelihood(check, answer, cause);
        chance += weights[cause];
      }
      if (chance > 0) {
        Situation then = new Situation(Share.ofOne(weights), open, asked, now.tried());
        sum += (1 - cantTell) * chance * minutes(then);
      }
    }
    return sum;
  }
}
