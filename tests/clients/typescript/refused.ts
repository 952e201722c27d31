// Never run: the compiler must find each of these faults, and complains about a line where it finds none.
import { client } from "./asking.js";

export async function refused(): Promise<void> {
  // @ts-expect-error There is no such substrate.
  await client.POST("/v1/sizing", { body: { feed: [{ substrate: "cattle_dun" }] } });
  // @ts-expect-error A first charge needs its digester and its feed.
  await client.POST("/v1/first-charge", { body: {} });
  // @ts-expect-error A volume has no kilograms.
  await client.POST("/v1/feed-mix", { body: { on_hand: [], working_volume: { value: 6, unit: "kg" } } });
  // @ts-expect-error There is no such operation.
  await client.POST("/v1/sising", { body: {} });
  const { data } = await client.POST("/v1/sizing", { body: {} });
  // @ts-expect-error There is no such member of the answer.
  console.log(data?.working_volum);
}
