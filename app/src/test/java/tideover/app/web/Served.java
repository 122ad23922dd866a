package tideover.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tideover.app.store.Store;
import tideover.engine.answer.Options;

/** The pages with a store of their own; two weather years, which is quick and enough for everything but the figures. */
final class Served implements AutoCloseable {
    final Store store;
    final PageServer pages;

    private Served(Store store, PageServer pages) {
        this.store = store;
        this.pages = pages;
    }

    static Served start(Path folder) {
        Store store = Store.open(folder.resolve("plans.db"));
        return new Served(store, PageServer.start(store, new Options(1, 2, 2, 4, 2), 0));
    }

    static Served start() {
        try {
            return start(Files.createTempDirectory("served"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    String at(String path) {
        return pages.address() + path;
    }

    @Override
    public void close() {
        pages.close();
        store.close();
    }
}
