/**
 * Every rule, listed by hand. Within a kind of joint the order is the order of its tests: a need is told the first
 * that refuses it, so what rules a pair out altogether stands before what is a matter of size.
 */
import type { Rule } from '../rule.ts';
import { fanHeader } from './cabling/fan-header.ts';
import { frontLead } from './cabling/front-lead.ts';
import { cardHeight } from './clearance/card-height.ts';
import { cardLength } from './clearance/card-length.ts';
import { coolerHeight } from './clearance/cooler-height.ts';
import { memoryHeight } from './clearance/memory-height.ts';
import { supplyLength } from './clearance/supply-length.ts';
import { caseAirflow } from './cooling/case-airflow.ts';
import { coolerInUse } from './cooling/cooler-in-use.ts';
import { coolerRating } from './cooling/cooler-rating.ts';
import { noCooling } from './cooling/no-cooling.ts';
import { adapterDirection } from './display/adapter-direction.ts';
import { boardSocketsIdle } from './display/board-sockets-idle.ts';
import { colourDepth } from './display/colour-depth.ts';
import { dualMode } from './display/dual-mode.ts';
import { pictureHeads } from './display/heads.ts';
import { noPicture } from './display/no-picture.ts';
import { pictureMode } from './display/picture-mode.ts';
import { picturePlug } from './display/picture-plug.ts';
import { pictureSocket } from './display/picture-socket.ts';
import { builtForSale } from './emissions/built-for-sale.ts';
import { classForHome } from './emissions/class-for-home.ts';
import { ownAuthorisation } from './emissions/own-authorisation.ts';
import { cardDriver } from './expansion/driver.ts';
import { laneSharing } from './expansion/lane-sharing.ts';
import { linkWidth } from './expansion/link-width.ts';
import { slotFree } from './expansion/slot-free.ts';
import { slotLength } from './expansion/slot-length.ts';
import { firmwareBootMode } from './firmware/boot-mode.ts';
import { instructionLevel } from './firmware/instruction-level.ts';
import { processorFamily } from './firmware/processor-family.ts';
import { securityModule } from './firmware/security-module.ts';
import { systemDiskSize } from './firmware/system-disk-size.ts';
import { systemMemory } from './firmware/system-memory.ts';
import { systemStorage } from './firmware/system-storage.ts';
import { channelBalance } from './memory/channel-balance.ts';
import { errorCorrection } from './memory/error-correction.ts';
import { memoryGeneration } from './memory/generation.ts';
import { mixedErrorCorrection } from './memory/mixed-error-correction.ts';
import { mixedModules } from './memory/mixed-modules.ts';
import { moduleSize } from './memory/module-size.ts';
import { memoryRegistered } from './memory/registered.ts';
import { memorySlotsFree } from './memory/slots-free.ts';
import { speedRun } from './memory/speed-run.ts';
import { totalCapacity } from './memory/total-capacity.ts';
import { memoryVoltage } from './memory/voltage.ts';
import { bayFree } from './mounting/bay-free.ts';
import { boardForm } from './mounting/board-form.ts';
import { casePresent } from './mounting/case-present.ts';
import { driveBay } from './mounting/drive-bay.ts';
import { fanPlaceFree } from './mounting/fan-place-free.ts';
import { fanSize } from './mounting/fan-size.ts';
import { lifting } from './mounting/lifting.ts';
import { supplyBay } from './mounting/supply-bay.ts';
import { supplyShape } from './mounting/supply-shape.ts';
import { boardLead } from './power/board-lead.ts';
import { cardLeads } from './power/card-leads.ts';
import { driveLeads } from './power/drive-leads.ts';
import { processorLead } from './power/processor-lead.ts';
import { supplyHeadroom } from './power/supply-headroom.ts';
import { supplyLoad } from './power/supply-load.ts';
import { boardPresent } from './socket/board-present.ts';
import { coolerMounting } from './socket/cooler-mounting.ts';
import { powerStage } from './socket/power-stage.ts';
import { processorSocket } from './socket/processor-socket.ts';
import { bootDrive } from './storage/boot-drive.ts';
import { driveKind } from './storage/drive-kind.ts';
import { drivePort } from './storage/drive-port.ts';
import { moduleKey } from './storage/module-key.ts';
import { moduleLength } from './storage/module-length.ts';
import { moduleLink } from './storage/module-link.ts';
import { moduleLinkSpeed } from './storage/module-link-speed.ts';
import { moduleSharesPort } from './storage/module-shares-port.ts';
import { moduleSlotFree } from './storage/module-slot-free.ts';
import { partitionTable } from './storage/partition-table.ts';

export const rules: readonly Rule[] = [
  processorSocket,
  boardPresent,
  coolerMounting,
  powerStage,
  coolerInUse,
  noCooling,
  coolerRating,
  caseAirflow,
  memoryGeneration,
  memoryRegistered,
  moduleSize,
  memorySlotsFree,
  totalCapacity,
  speedRun,
  channelBalance,
  memoryVoltage,
  errorCorrection,
  mixedErrorCorrection,
  mixedModules,
  slotLength,
  slotFree,
  linkWidth,
  laneSharing,
  cardDriver,
  moduleKey,
  moduleLength,
  moduleLink,
  moduleSlotFree,
  drivePort,
  moduleLinkSpeed,
  bootDrive,
  partitionTable,
  moduleSharesPort,
  driveKind,
  boardForm,
  casePresent,
  supplyShape,
  supplyBay,
  driveBay,
  bayFree,
  fanSize,
  fanPlaceFree,
  supplyLength,
  coolerHeight,
  cardLength,
  cardHeight,
  memoryHeight,
  boardLead,
  processorLead,
  cardLeads,
  driveLeads,
  supplyLoad,
  supplyHeadroom,
  fanHeader,
  frontLead,
  picturePlug,
  pictureSocket,
  noPicture,
  pictureMode,
  colourDepth,
  dualMode,
  adapterDirection,
  pictureHeads,
  boardSocketsIdle,
  processorFamily,
  firmwareBootMode,
  securityModule,
  systemMemory,
  systemStorage,
  systemDiskSize,
  instructionLevel,
  lifting,
  classForHome,
  ownAuthorisation,
  builtForSale,
];
