package tideover.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * All plans, their files and the reader's choices in one SQLite file. One connection is held open, which writes and reads; for
 * several threads at once. Every change is one transaction that is on the disk before it returns.
 */
public final class Store implements AutoCloseable {
    /** Of all files of one plan together. */
    public static final long MOST_BYTES_TOGETHER = 64_000_000;

    /** "TIDE": tells our files from any other SQLite file. */
    private static final int APPLICATION_ID = 0x54494445;

    private static final int NEWEST_VERSION = 1;
    /** Those that others refer to first. */
    private static final List<String> TABLES = List.of("plan", "plan_file", "earlier", "setting");

    private static final int KEPT_REVISIONS = 200;
    private static final int DAYS_KEPT = 30;
    private static final int MOST_FILES = 60;
    private static final String FILE_NAME = "[A-Za-z0-9_][A-Za-z0-9._-]{0,79}(/[A-Za-z0-9_][A-Za-z0-9._-]{0,79})?";
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private final Path file;
    private final Clock clock;
    private final Handle handle;
    private final Guarded guarded;

    private Store(Path file, Clock clock, Handle handle, Guarded guarded) {
        this.file = file;
        this.clock = clock;
        this.handle = handle;
        this.guarded = guarded;
    }

    /** Opens the file, or makes it. Throws {@link StoreProblem} where it cannot be used; it is then left as it was. */
    public static Store open(Path file) {
        return open(file, Clock.systemDefaultZone());
    }

    static Store open(Path file, Clock clock) {
        Path whole = file.toAbsolutePath();
        makeFolder(whole);
        Guarded guarded = Guarded.take(whole);
        try {
            inspect(whole);
            Handle handle = Jdbi.create(() -> connect(whole)).open();
            try {
                Store store = new Store(whole, clock, handle, guarded);
                store.prepare();
                return store;
            } catch (RuntimeException e) {
                handle.close();
                throw e;
            }
        } catch (RuntimeException e) {
            guarded.close();
            throw told(e, whole);
        }
    }

    private static void makeFolder(Path file) {
        Path folder = file.getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new StoreProblem(
                    "The folder " + folder + " for your plans cannot be made: " + e.getMessage() + ".", e);
        }
    }

    private static Connection connect(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(3000);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config.createConnection("jdbc:sqlite:" + file);
    }

    /** Tells whose file it is, without so much as touching it. */
    private static void inspect(Path file) {
        try {
            if (!Files.exists(file) || Files.size(file) == 0) {
                return;
            }
        } catch (IOException e) {
            throw new StoreProblem("The file " + file + " cannot be read: " + e.getMessage() + ".", e);
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        try (Handle handle = Jdbi.create(() -> config.createConnection("jdbc:sqlite:" + file))
                .open()) {
            int tables = handle.createQuery("select count(*) from sqlite_master")
                    .mapTo(Integer.class)
                    .one();
            if (tables > 0 && pragma(handle, "application_id") != APPLICATION_ID) {
                throw new StoreProblem("The file " + file + " is a database of some other program; it was left alone.");
            }
            if (pragma(handle, "user_version") > NEWEST_VERSION) {
                throw new StoreProblem(
                        "The file " + file + " was written by a newer Tideover. Use that one; nothing was changed.");
            }
        }
    }

    /** Brings the file up to the newest form. */
    private void prepare() {
        int version = pragma(handle, "user_version");
        if (version > 0 && version < NEWEST_VERSION) {
            backup(file.resolveSibling(file.getFileName() + ".before-" + NEWEST_VERSION), true);
        }
        for (int next = version + 1; next <= NEWEST_VERSION; next++) {
            String script = script(next);
            int number = next;
            change(in -> {
                in.createScript(script).execute();
                in.execute("pragma application_id = " + APPLICATION_ID);
                return in.execute("pragma user_version = " + number);
            });
        }
        String old = LocalDateTime.now(clock).minusDays(DAYS_KEPT).format(WHEN);
        change(in -> in.execute("delete from plan where deleted is not null and deleted < ?", old));
    }

    private static String script(int version) {
        try (InputStream in = Store.class.getResourceAsStream("/tideover/store/" + version + ".sql")) {
            if (in == null) {
                throw new IllegalStateException("no script for version " + version);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int pragma(Handle handle, String name) {
        return handle.createQuery("pragma " + name).mapTo(Integer.class).one();
    }

    private String now() {
        return LocalDateTime.now(clock).format(WHEN);
    }

    // --- reading

    /** Newest first. */
    public List<PlanLine> plans() {
        return lines("deleted is null");
    }

    /** Deleted not long ago, and to be had back; newest first. */
    public List<PlanLine> deleted() {
        return lines("deleted is not null");
    }

    private List<PlanLine> lines(String which) {
        return read(in -> in.createQuery("select id, name, changed, revision from plan where " + which
                        + " order by changed desc, id desc")
                .map((row, context) -> new PlanLine(row.getLong(1), row.getString(2), row.getString(3), row.getLong(4)))
                .list());
    }

    /** A plan that is not deleted. */
    public Optional<StoredPlan> plan(long id) {
        return read(in -> {
            Map<String, byte[]> files = new LinkedHashMap<>();
            in.createQuery("select name, bytes from plan_file where plan = ? order by name")
                    .bind(0, id)
                    .map((row, context) -> Map.entry(row.getString(1), row.getBytes(2)))
                    .forEach(entry -> files.put(entry.getKey(), entry.getValue()));
            return in.createQuery("select text, revision, changed from plan where id = ? and deleted is null")
                    .bind(0, id)
                    .map((row, context) ->
                            new StoredPlan(id, row.getString(1), row.getLong(2), row.getString(3), files))
                    .findOne();
        });
    }

    public Optional<String> setting(String key) {
        return read(in -> in.createQuery("select value from setting where key = ?")
                .bind(0, key)
                .mapTo(String.class)
                .findOne());
    }

    private long one(String query, long id) {
        return handle.createQuery(query.replace("?", String.valueOf(id)))
                .mapTo(Long.class)
                .one();
    }

    // --- changing

    public long add(String name, String text, Map<String, byte[]> files) {
        checkFiles(files);
        return change(in -> {
            in.execute("insert into plan (name, text, revision, changed) values (?, ?, 1, ?)", name, text, now());
            long id = one("select last_insert_rowid()", 0);
            files.forEach((file, bytes) -> in.execute("insert into plan_file values (?, ?, ?)", id, file, bytes));
            return id;
        });
    }

    /**
     * Puts a new text in the place of a plan's text; the old one is kept for {@link #undo}.
     *
     * @param base the revision that the new text was made from
     * @return the new revision
     * @throws StaleEdit where the newest is another
     */
    public long replace(long id, long base, String name, String text) {
        return change(in -> {
            long newest = revision(in, id);
            if (newest != base) {
                throw new StaleEdit(base, newest);
            }
            remember(in, id);
            return step(in, id, name, text);
        });
    }

    private static long revision(Handle in, long id) {
        return in.createQuery("select revision from plan where id = ? and deleted is null")
                .bind(0, id)
                .mapTo(Long.class)
                .findOne()
                .orElseThrow(() -> new StoreProblem("There is no such plan; perhaps it was deleted meanwhile."));
    }

    private static void remember(Handle in, long id) {
        in.execute("insert into earlier select id, revision, name, text from plan where id = ?", id);
        in.execute(
                "delete from earlier where plan = ? and revision <= (select revision from plan where id = ?) - "
                        + KEPT_REVISIONS,
                id,
                id);
    }

    private long step(Handle in, long id, String name, String text) {
        in.execute(
                "update plan set name = ?, text = ?, revision = revision + 1, changed = ? where id = ?",
                name,
                text,
                now(),
                id);
        return revision(in, id);
    }

    /** Back to the text before the last change; false where there is none. */
    public boolean undo(long id) {
        return change(in -> {
            revision(in, id);
            record Text(long revision, String name, String text) {}
            Optional<Text> before = in.createQuery(
                            "select revision, name, text from earlier where plan = ? order by revision desc limit 1")
                    .bind(0, id)
                    .map((row, context) -> new Text(row.getLong(1), row.getString(2), row.getString(3)))
                    .findOne();
            before.ifPresent(text -> {
                in.execute("delete from earlier where plan = ? and revision = ?", id, text.revision());
                step(in, id, text.name(), text.text());
            });
            return before.isPresent();
        });
    }

    /** Keeps a file with a plan; counts as a change of it. */
    public void putFile(long id, String name, byte[] bytes) {
        checkFiles(Map.of(name, bytes));
        change(in -> {
            revision(in, id);
            in.execute("insert or replace into plan_file values (?, ?, ?)", id, name, bytes);
            long together = in.createQuery("select sum(length(bytes)) from plan_file where plan = ?")
                    .bind(0, id)
                    .mapTo(Long.class)
                    .one();
            if (together > MOST_BYTES_TOGETHER) {
                throw tooLarge();
            }
            return in.execute("update plan set revision = revision + 1, changed = ? where id = ?", now(), id);
        });
    }

    public void removeFile(long id, String name) {
        change(in -> {
            revision(in, id);
            in.execute("delete from plan_file where plan = ? and name = ?", id, name);
            return in.execute("update plan set revision = revision + 1, changed = ? where id = ?", now(), id);
        });
    }

    private static void checkFiles(Map<String, byte[]> files) {
        if (files.size() > MOST_FILES) {
            throw new StoreProblem("A plan keeps at most " + MOST_FILES + " files.");
        }
        if (files.values().stream().mapToLong(bytes -> bytes.length).sum() > MOST_BYTES_TOGETHER) {
            throw tooLarge();
        }
        if (!files.keySet().stream().allMatch(name -> name.matches(FILE_NAME))) {
            throw new StoreProblem(
                    "A file's name holds letters, digits, dots and dashes only, and at most one folder.");
        }
    }

    private static StoreProblem tooLarge() {
        return new StoreProblem(
                "The files of one plan hold at most " + MOST_BYTES_TOGETHER / 1_000_000 + " MB together.");
    }

    /** A plan with the same files under another name. */
    public long copy(long id, String name, String text) {
        Map<String, byte[]> files = plan(id).orElseThrow(
                        () -> new StoreProblem("There is no such plan; perhaps it was deleted meanwhile."))
                .files();
        return add(name, text, files);
    }

    /** It can be had back by {@link #restore} for 30 days. */
    public void delete(long id) {
        change(in -> in.execute("update plan set deleted = ? where id = ? and deleted is null", now(), id));
    }

    public void restore(long id) {
        change(in -> in.execute("update plan set deleted = null where id = ?", id));
    }

    public void set(String key, String value) {
        change(in -> in.execute("insert or replace into setting values (?, ?)", key, value));
    }

    // --- copies

    /**
     * Writes everything into a new file.
     *
     * @param over whether an older file of that name may be replaced
     */
    public synchronized void backup(Path to, boolean over) {
        Path whole = to.toAbsolutePath();
        if (!over && Files.exists(whole)) {
            throw new StoreProblem("There is a file " + whole + " already; it was left alone.");
        }
        Path half = whole.resolveSibling(whole.getFileName() + ".part");
        try {
            Files.deleteIfExists(half);
            handle.execute("vacuum into ?", half.toString());
            check(half);
            Files.move(half, whole, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new StoreProblem("The copy " + whole + " cannot be written: " + e.getMessage() + ".", e);
        } catch (RuntimeException e) {
            throw told(e, whole);
        }
    }

    /**
     * Puts everything of a copy in the place of everything here, in one transaction; what was here is kept in a file beside this one,
     * whose name is returned. Who has the copy open, or what it is called, makes no difference.
     */
    public synchronized Path putBack(Path from) {
        check(from);
        Path kept = file.resolveSibling(file.getFileName() + ".replaced-1");
        for (int number = 2; Files.exists(kept); number++) {
            kept = file.resolveSibling(file.getFileName() + ".replaced-" + number);
        }
        backup(kept, false);
        try {
            handle.execute("attach ? as other", from.toAbsolutePath().toString());
            try {
                change(in -> {
                    for (String table : TABLES) {
                        in.execute("delete from main." + table);
                    }
                    int rows = 0;
                    for (String table : TABLES) {
                        rows += in.execute("insert into main." + table + " select * from other." + table);
                    }
                    return rows;
                });
            } finally {
                handle.execute("detach other");
            }
        } catch (JdbiException e) {
            throw told(e, file);
        }
        return kept;
    }

    /** Refuses what is not a sound file of ours. */
    private static void check(Path copy) {
        if (!Files.isRegularFile(copy)) {
            throw new StoreProblem("There is no file " + copy + ".");
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        try (Handle handle = Jdbi.create(() -> config.createConnection("jdbc:sqlite:" + copy.toAbsolutePath()))
                .open()) {
            String sound = handle.createQuery("pragma integrity_check(1)")
                    .mapTo(String.class)
                    .one();
            if (!sound.equals("ok") || pragma(handle, "application_id") != APPLICATION_ID) {
                throw new StoreProblem(
                        "The file " + copy + " is no sound copy of Tideover's plans; nothing was changed.");
            }
            if (pragma(handle, "user_version") > NEWEST_VERSION) {
                throw new StoreProblem("The file " + copy + " was written by a newer Tideover; nothing was changed.");
            }
        } catch (JdbiException e) {
            throw new StoreProblem(
                    "The file " + copy + " is no sound copy of Tideover's plans; nothing was changed.", e);
        }
    }

    /** So large the file may become, in its pages: for tests of a full disk. */
    void limitPages(int most) {
        handle.execute("pragma max_page_count = " + most);
    }

    /** Refuses every change: for tests of a disk that may only be read. */
    void readOnly(boolean only) {
        handle.execute("pragma query_only = " + (only ? 1 : 0));
    }

    // --- one at a time, and in words

    private synchronized <T> T read(Function<Handle, T> reading) {
        try {
            return reading.apply(handle);
        } catch (JdbiException e) {
            throw told(e, file);
        }
    }

    /** One transaction, begun as one that writes, so that it cannot fail half way for another's sake. */
    private synchronized <T> T change(Function<Handle, T> changing) {
        try {
            handle.execute("begin immediate");
            T found;
            try {
                found = changing.apply(handle);
                handle.execute("commit");
            } catch (RuntimeException e) {
                rollBack();
                throw e;
            }
            return found;
        } catch (JdbiException e) {
            throw told(e, file);
        }
    }

    private void rollBack() {
        try {
            handle.execute("rollback");
        } catch (JdbiException e) {
            // A full disk has rolled back by itself.
        }
    }

    /** A database's fault as a sentence for people; anything else as it is. */
    private static RuntimeException told(RuntimeException e, Path file) {
        SQLiteErrorCode code = code(e);
        if (code == null) {
            return e;
        }
        String name = code.name();
        String words;
        if (name.startsWith("SQLITE_FULL")) {
            words = "The disk is full: this change was not kept, all earlier ones were. Make room and type it again.";
        } else if (name.startsWith("SQLITE_READONLY")
                || name.startsWith("SQLITE_CANTOPEN")
                || name.startsWith("SQLITE_PERM")) {
            words = "The file " + file + " may not be written to here; nothing was changed.";
        } else if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
            words = "The file " + file
                    + " is held by another program; nothing was changed. Close that one and try again.";
        } else if (name.startsWith("SQLITE_NOTADB") || name.startsWith("SQLITE_CORRUPT")) {
            words = "The file " + file
                    + " cannot be read as plans of Tideover. It was left as it is: put back a copy, or move it away.";
        } else if (name.startsWith("SQLITE_IOERR")) {
            words = "The disk failed under " + file + ": this change was not kept.";
        } else {
            return e;
        }
        return new StoreProblem(words, e);
    }

    private static @Nullable SQLiteErrorCode code(Throwable e) {
        for (Throwable at = e; at != null; at = at.getCause()) {
            if (at instanceof SQLiteException sqlite) {
                return sqlite.getResultCode();
            }
        }
        return null;
    }

    @Override
    public synchronized void close() {
        handle.close();
        guarded.close();
    }
}
