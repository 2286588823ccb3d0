/** Pictures that lie on a sheet of the played Excel. */
import { client, type Client, type Queue } from "./client.js";
import type { SheetModel, ShapeModel } from "./model.js";

export const NEW_SHAPE = {
  name: "Picture 1",
  altTextDescription: "",
  left: 0,
  top: 0,
  width: 1,
  height: 1,
  rotation: 0,
  lockAspectRatio: true,
  placement: "TwoCell",
};

export function shapeClient(queue: Queue, target: () => ShapeModel, sheet: SheetModel | undefined): Client {
  const set = Object.fromEntries(
    Object.keys(NEW_SHAPE).map((key) => [key, (one: ShapeModel, given: never) => Object.assign(one, { [key]: given })]),
  );
  return client(queue, {
    target,
    get: { name: ({ name }) => name },
    set,
    members: {
      delete: () => {
        queue.push(() => {
          if (sheet !== undefined) sheet.shapes = sheet.shapes.filter((one) => one !== target());
        });
      },
    },
  });
}
