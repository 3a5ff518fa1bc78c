package org.sunder.durability;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;

/** Writes to H2 with its default settings until it is killed; prints each committed row. */
final class PlainDatabaseUnderLoad {

    private PlainDatabaseUnderLoad() {}

    public static void main(String[] args) throws Exception {
        try (Connection connection = DriverManager.getConnection(args[0], "sunder", "")) {
            connection.createStatement().execute("create table airframe (name varchar(80))");
            connection.createStatement().execute("checkpoint sync");
            try (PreparedStatement insert = connection.prepareStatement("insert into airframe values (?)")) {
                for (int i = 0; true; i++) {
                    insert.setString(1, "load " + i);
                    insert.executeUpdate();
                    System.out.println("acknowledged load " + i);
                }
            }
        }
    }
}
