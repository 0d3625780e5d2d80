/** A pull that may become good to print is for approval, as screens say it. */
export const pullKindMigration: readonly string[] = [
  `UPDATE pulls SET record_json = json_set(record_json, '$.kind', 'for-approval')
    WHERE json_extract(record_json, '$.kind') = 'candidate'`,
];
