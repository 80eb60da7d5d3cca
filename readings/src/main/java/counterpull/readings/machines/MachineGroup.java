package counterpull.readings.machines;

import counterpull.bench.machine.MachineBench;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;

/** One way of reading a machine: its key (the shape's name) and its keys. */
interface MachineGroup {
    Shape shape();

    MachineBench read(String name, Fields fields);
}
