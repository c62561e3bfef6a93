package org.scalepan.quantity;

/** What two amounts were asked while a reckoning was written down. */
enum Condition {
    SAME,
    BELOW;

    boolean of(double left, double right) {
        return this == SAME ? left == right : left < right;
    }
}
