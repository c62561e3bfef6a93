package org.scalepan;

/** Starts the service. */
public final class Scalepan {
    private Scalepan() {}

    public static void main(String[] args) {
        System.out.println("starting");
    }
}
