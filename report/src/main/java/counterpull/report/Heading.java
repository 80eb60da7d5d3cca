package counterpull.report;

import java.time.LocalDate;

/**
 * What stands at the head of everything that leaves the program.
 *
 * @param scenario name of the scenario
 * @param client what the scenario calls the person (first name or initial)
 * @param machine what the floor calls the machine
 * @param made the day it was made, given from outside
 * @param version of the program
 */
public record Heading(String scenario, String client, String machine, LocalDate made, String version) {}
