package org.tidegate.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.UserId;

/** One transaction: the tables by subject, and the events that go to the ledger with it. For one thread. */
public final class Tx {

    private final Connection connection;
    private final Dialect dialect;
    private final MasterKey master;
    private final List<Event> events = new ArrayList<>();

    Tx(Connection connection, Dialect dialect, MasterKey master) {
        this.connection = connection;
        this.dialect = dialect;
        this.master = master;
    }

    /** What will become a leaf when the transaction ends. */
    record Event(String kind, UserId who, List<String> codes, Map<String, String> references) {}

    /** Adds an event to the ledger, as part of this transaction. No personal data: codes and keyed references only. */
    public void record(String kind, UserId who, List<String> codes, Map<String, String> references) {
        events.add(new Event(kind, who, codes, references));
    }

    public Messages messages() {
        return new Messages(this);
    }

    public Links links() {
        return new Links(this);
    }

    public Tests tests() {
        return new Tests(this);
    }

    public Observations observations() {
        return new Observations(this);
    }

    public Retention retention() {
        return new Retention(this);
    }

    public Crops crops() {
        return new Crops(this);
    }

    public Repeats repeats() {
        return new Repeats(this);
    }

    public Workload workload() {
        return new Workload(this);
    }

    public Reminders reminders() {
        return new Reminders(this);
    }

    public Submissions submissions() {
        return new Submissions(this);
    }

    public Assessments assessments() {
        return new Assessments(this);
    }

    public WorkQueue work() {
        return new WorkQueue(this);
    }

    public Ledger ledger() {
        return new Ledger(this);
    }

    public Replies replies() {
        return new Replies(this);
    }

    public Judgements judgements() {
        return new Judgements(this);
    }

    public Claims claims() {
        return new Claims(this);
    }

    public Readings readings() {
        return new Readings(this);
    }

    public Endings endings() {
        return new Endings(this);
    }

    public PersonLinks personLinks() {
        return new PersonLinks(this);
    }

    public Outbox outbox() {
        return new Outbox(this);
    }

    public PolicyActs policyActs() {
        return new PolicyActs(this);
    }

    public Waits waits() {
        return new Waits(this);
    }

    public CaseKeys caseKeys() {
        return new CaseKeys(this, master);
    }

    public Users users() {
        return new Users(this);
    }

    public Registers registers() {
        return new Registers(this);
    }

    /** Waits until no other transaction, on no machine, assesses; held until this one ends. */
    public void lockAssessing() {
        first("SELECT name FROM locks WHERE name = 'assessing'" + dialect.forUpdate(), r -> r.text("name"));
    }

    List<Event> events() {
        return List.copyOf(events);
    }

    Dialect dialect() {
        return dialect;
    }

    /** @return how many rows were changed */
    int update(String sql, @Nullable Object... arguments) {
        try (PreparedStatement statement = prepared(sql, arguments)) {
            return statement.executeUpdate();
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    <T> List<T> list(String sql, Row.Reader<T> reader, @Nullable Object... arguments) {
        try (PreparedStatement statement = prepared(sql, arguments);
                ResultSet result = statement.executeQuery()) {
            List<T> rows = new ArrayList<>();
            Row row = new Row(result);
            while (result.next()) {
                rows.add(reader.read(row));
            }
            return rows;
        } catch (SQLException e) {
            throw failed(e);
        }
    }

    <T> Optional<T> first(String sql, Row.Reader<T> reader, @Nullable Object... arguments) {
        return list(sql, reader, arguments).stream().findFirst();
    }

    private PreparedStatement prepared(String sql, @Nullable Object... arguments) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        try {
            for (int i = 0; i < arguments.length; i++) {
                set(statement, i + 1, arguments[i]);
            }
            return statement;
        } catch (SQLException e) {
            statement.close();
            throw e;
        }
    }

    private static void set(PreparedStatement statement, int place, @Nullable Object argument) throws SQLException {
        Object value = argument instanceof Optional<?> o ? o.orElse(null) : argument;
        if (value instanceof Instant i) {
            statement.setLong(place, i.toEpochMilli());
        } else if (value instanceof Boolean b) {
            statement.setInt(place, b ? 1 : 0);
        } else if (value == null) {
            statement.setNull(place, Types.NULL);
        } else {
            statement.setObject(place, value);
        }
    }

    static StoreException failed(SQLException e) {
        return new StoreException("The store refused: " + e.getMessage(), e);
    }
}
