package tideover.engine.answer;

import tideover.engine.search.Find;
import tideover.engine.search.Search;

/** Hands on what the search tells. */
record SearchTold(Progress progress) implements Search.Progress {
    @Override
    public void at(double share) {
        progress.at("screening", share);
    }

    @Override
    public void found(Find find) {
        progress.found(find);
    }

    @Override
    public void judgedBelow(long cents) {
        progress.judgedBelow(cents);
    }
}
