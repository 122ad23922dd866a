package tideover.app.store;

import org.jspecify.annotations.Nullable;

/** The store cannot do what was asked; the message is one whole sentence for whoever sits before it. Nothing was lost. */
public final class StoreProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    public StoreProblem(String sentence) {
        super(sentence);
    }

    StoreProblem(String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
    }
}
